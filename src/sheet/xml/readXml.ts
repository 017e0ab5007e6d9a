import { SaxesParser } from 'saxes';
import { FileProblem } from '../zip/fileProblem.js';
import { xmlDecoder } from './xmlDecoder.js';
import { XmlNames } from './xmlNames.js';

/** Values by name with the prefix its reader knows; without a prototype, so that any name will do. */
export type XmlAttributes = Readonly<Record<string, string>>;

interface XmlReader {
  /** Prefix to use for the names of a namespace, whatever the file calls it; '' for names without one. */
  readonly prefixes: ReadonlyMap<string, string>;
  open(name: string, attributes: XmlAttributes): void;
  text?(text: string): void;
  close?(name: string): void;
}

const deepest = 200;
const mostAttributes = 1000;
const sliceLength = 64 * 1024;

/**
 * Reads one XML part piece by piece. A document type, which can hold entities that unfold without end, is refused; so
 * are depths and numbers of attributes no workbook has.
 */
export function readXml(bytes: Uint8Array, part: string, reader: XmlReader): void {
  const parser = parserFor(part, reader);
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

function parserFor(part: string, reader: XmlReader): SaxesParser<{ xmlns: false; position: false }> {
  const parser = new SaxesParser({ xmlns: false, position: false });
  parser.on('error', () => {
    throw damaged(part);
  });
  parser.on('doctype', () => {
    throw new FileProblem(
      `The file was tampered with: its part ${JSON.stringify(part)} has a document type with entities of its own, which no workbook has; it is not opened.`,
    );
  });
  putElements(parser, part, reader);
  if (reader.text !== undefined) {
    const text = reader.text.bind(reader);
    parser.on('text', text);
    parser.on('cdata', text);
  }
  return parser;
}

/** Only attributes with a prefix, which are few, are looked at one by one. */
function putElements(parser: SaxesParser<{ xmlns: false; position: false }>, part: string, reader: XmlReader): void {
  const names = new XmlNames(reader.prefixes);
  let depth = 0;
  let attributes = 0;
  let declares = false;
  let prefixed = false;
  parser.on('opentagstart', () => {
    attributes = 0;
    declares = prefixed = false;
    if (++depth > deepest) throw damaged(part);
  });
  parser.on('attribute', ({ name }) => {
    if (++attributes > mostAttributes) throw damaged(part);
    if (name.includes(':')) prefixed = true;
    if (name.startsWith('xmlns')) declares = true;
  });
  parser.on('opentag', (tag) => {
    if (declares) names.declare(depth, tag.attributes);
    reader.open(names.element(tag.name), prefixed ? names.attributes(tag.attributes) : tag.attributes);
  });
  parser.on('closetag', (tag) => {
    reader.close?.(names.element(tag.name));
    names.closed(depth--);
  });
}

function damaged(part: string): FileProblem {
  return new FileProblem(
    `The file is damaged: its part ${JSON.stringify(part.slice(0, 60))} is not well-formed XML; open it in a spreadsheet program and save it anew.`,
  );
}
