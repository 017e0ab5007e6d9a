import { SaxesParser } from 'saxes';
import { FileProblem } from '../zip/fileProblem.js';
import { XmlNames } from './xmlNames.js';
import { xmlDecoder } from './xmlEncoding.js';

/** Values by name, with the prefix that the walker knows. The object has no prototype, so any name will do. */
export type XmlAttributes = Readonly<Record<string, string>>;

/** The tag being met and where it stands in the text. One object serves the whole walk; `kept` gives a copy that lasts. */
export interface XmlTag {
  /** How many elements are open around this one. */
  readonly depth: number;
  /** Its name as written. */
  readonly written: string;
  /** Its attributes under the names as written; of an end tag those of its start tag. */
  readonly attributes: XmlAttributes;
  /** Counted in UTF-16 units. The end tag of an empty element has no length. Known where a text is walked. */
  readonly from: number;
  readonly to: number;
  kept(): XmlTag;
}

/** What is called for each tag and text of an XML part, in order. */
export interface XmlWalker {
  /** Prefix to use for the names of a namespace, whatever the file calls it; '' for names without one. */
  readonly prefixes: ReadonlyMap<string, string>;
  open(name: string, attributes: XmlAttributes, tag: XmlTag): void;
  text?(text: string): void;
  close?(name: string, tag: XmlTag): void;
}

const deepest = 200;
const mostAttributes = 1000;
const sliceLength = 64 * 1024;

/**
 * Walks through one XML part. A document type is refused, for its entities could expand without end; so are
 * elements nested deeper, or with more attributes, than any workbook has.
 *
 * @param source bytes, which are decoded piece by piece, or a text, if places in it are needed
 */
export function walkXml(source: Uint8Array | string, part: string, walker: XmlWalker): void {
  const parser = parserFor(part);
  putElements(parser, { part, text: typeof source === 'string' ? source : undefined }, walker);
  if (walker.text !== undefined) {
    const text = walker.text.bind(walker);
    parser.on('text', text);
    parser.on('cdata', text);
  }
  if (typeof source === 'string') parser.write(source).close();
  else writeBytes(parser, source, part);
}

type Parser = SaxesParser<{ xmlns: false; position: false }>;

function parserFor(part: string): Parser {
  const parser = new SaxesParser({ xmlns: false, position: false });
  parser.on('error', () => {
    throw damaged(part);
  });
  parser.on('doctype', () => {
    throw new FileProblem(
      `The file was tampered with: its part ${JSON.stringify(part)} has a document type with entities of its own, which no workbook has; it is not opened.`,
    );
  });
  return parser;
}

function writeBytes(parser: Parser, bytes: Uint8Array, part: string): void {
  const decoder = xmlDecoder(bytes, part);
  const decoded = (slice?: Uint8Array): string => {
    try {
      return slice === undefined ? decoder.decode() : decoder.decode(slice, { stream: true });
    } catch {
      throw damaged(part);
    }
  };
  for (let at = 0; at < bytes.length; at += sliceLength) parser.write(decoded(bytes.subarray(at, at + sliceLength)));
  parser.write(decoded()).close();
}

/** Most tags have no prefixed attributes, and then nothing is copied. */
function putElements(
  parser: Parser,
  { part, text }: { readonly part: string; readonly text: string | undefined },
  walker: XmlWalker,
): void {
  const names = new XmlNames(walker.prefixes);
  const tag = new PlacedTag(parser, text);
  parser.on('opentag', (met) => {
    let count = 0;
    let declares = false;
    let prefixed = false;
    for (const name in met.attributes) {
      count++;
      if (name.includes(':')) prefixed = true;
      if (name.startsWith('xmlns')) declares = true;
    }
    if (++tag.depth >= deepest || count > mostAttributes) throw damaged(part);
    if (declares) names.declare(tag.depth, met.attributes);
    tag.met(met, false);
    walker.open(names.element(met.name), prefixed ? names.attributes(met.attributes) : met.attributes, tag);
  });
  parser.on('closetag', (met) => {
    tag.met(met, met.isSelfClosing);
    walker.close?.(names.element(met.name), tag);
    names.closed(tag.depth--);
  });
}

class PlacedTag implements XmlTag {
  depth = -1;
  written = '';
  attributes: XmlAttributes = {};
  #isEmpty = false;

  constructor(
    private readonly parser: { readonly position: number },
    private readonly text: string | undefined,
  ) {}

  met({ name, attributes }: { readonly name: string; readonly attributes: XmlAttributes }, isEmpty: boolean): void {
    this.written = name;
    this.attributes = attributes;
    this.#isEmpty = isEmpty;
  }

  get to(): number {
    return this.parser.position;
  }

  /** An attribute value holds no "<", so the last one before the end begins the tag. */
  get from(): number {
    if (this.text === undefined) throw new Error('places are known where a text is walked');
    return this.#isEmpty ? this.to : this.text.lastIndexOf('<', this.to - 1);
  }

  kept(): XmlTag {
    const tag = new PlacedTag({ position: this.to }, this.text);
    tag.depth = this.depth;
    tag.met({ name: this.written, attributes: this.attributes }, this.#isEmpty);
    return tag;
  }
}

function damaged(part: string): FileProblem {
  return new FileProblem(
    `The file is damaged: its part ${JSON.stringify(part.slice(0, 60))} is not well-formed XML; open it in a spreadsheet program and save it again.`,
  );
}
