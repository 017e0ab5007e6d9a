import { SaxesParser } from 'saxes';
import { FileProblem } from '../zip/fileProblem.js';

/** A start tag and where it stands. */
export class StartTag {
  constructor(
    private readonly xml: string,
    readonly name: string,
    readonly attributes: Readonly<Record<string, string | undefined>>,
    readonly to: number,
    readonly selfClosing: boolean,
  ) {}

  /** An attribute value holds no "<", so the last one before the end begins the tag. */
  get from(): number {
    return this.xml.lastIndexOf('<', this.to - 1);
  }
}

/** An end tag and where it stands; behind an empty element it has no length. */
export class EndTag {
  constructor(
    private readonly xml: string,
    readonly name: string,
    readonly to: number,
    private readonly isEmpty: boolean,
  ) {}

  get from(): number {
    return this.isEmpty ? this.to : this.xml.lastIndexOf('<', this.to - 1);
  }
}

export interface XmlWalker {
  /** @param depth How many elements are open around this one. */
  open(tag: StartTag, depth: number): void;
  close?(tag: EndTag, depth: number): void;
  text?(text: string): void;
}

/** Goes through the elements of a part once, in order. Positions count the UTF-16 units of the text. */
export function walkXml(xml: string, part: string, walker: XmlWalker): void {
  const parser = new SaxesParser({ position: true, xmlns: false });
  let depth = 0;
  parser.on('opentag', ({ name, attributes, isSelfClosing }) => {
    walker.open(new StartTag(xml, name, attributes, parser.position, isSelfClosing), depth);
    depth += 1;
  });
  parser.on('closetag', ({ name, isSelfClosing }) => {
    depth -= 1;
    walker.close?.(new EndTag(xml, name, parser.position, isSelfClosing), depth);
  });
  parser.on('doctype', () => {
    throw new FileProblem(`${part} in the file holds a document type, which no workbook has: it was not changed.`);
  });
  if (walker.text) {
    const text = walker.text.bind(walker);
    parser.on('text', text);
    parser.on('cdata', text);
  }
  parsed(parser, xml, part);
}

function parsed(parser: SaxesParser, xml: string, part: string): void {
  try {
    parser.write(xml).close();
  } catch (error) {
    if (error instanceof FileProblem || !(error instanceof Error)) throw error;
    // Faults that saxes finds begin with the place, "12:3: "; any other is ours.
    if (!/^\d+:\d+: /.test(error.message)) throw error;
    throw new FileProblem(
      `${part} in the file is not sound XML (${error.message}), it was not changed: save the file anew with your spreadsheet program.`,
    );
  }
}
