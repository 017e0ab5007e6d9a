import { FileProblem } from '../zip/fileProblem.js';
import type { Book } from '../book/book.js';
import type { PackageParts } from '../zip/packageParts.js';
import { walkXml } from '../xml/walkXml.js';
import { ContentReader } from './contentReader.js';
import { odsPrefixes } from './odsPrefixes.js';
import { OdsStyles } from './odsStyles.js';

/** A workbook of an .ods file. */
export function readOds(parts: PackageParts, withLooks = false): Book {
  refuseEncrypted(parts);
  const styles = sharedStyles(parts, withLooks);
  const content = parts.bytes('content.xml');
  if (content === undefined) throw new FileProblem('The file is damaged: the part with its sheets is missing.');
  const reader = new ContentReader(styles);
  walkXml(content, 'content.xml', reader);
  if (reader.sheets.length === 0) throw new FileProblem('The file has no sheet with cells; save it again as .xlsx.');
  return {
    kind: 'ods',
    sheets: reader.sheets,
    names: reader.names.names,
    tables: reader.names.tables(reader.sheets),
    date1904: reader.date1904,
    remarks: reader.date1904
      ? ['The file counts its days from 1904; cells with a date format were read as the days they show.']
      : [],
    ...(styles.looks === undefined ? {} : { plain: styles.looks.plain }),
  };
}

/** The styles that the content builds on: their number formats say which cells show days. */
export function sharedStyles(parts: PackageParts, withLooks = false): OdsStyles {
  const styles = new OdsStyles(withLooks);
  const shared = parts.bytes('styles.xml');
  if (shared === undefined) return styles;
  walkXml(shared, 'styles.xml', {
    prefixes: odsPrefixes,
    open: (element, attributes) => styles.open(element, attributes),
    text: (text) => styles.text(text),
    close: (element) => styles.close(element),
  });
  return styles;
}

/**
 * In a file with a password each part is encrypted by itself, and the list of parts says so. Old programs gave that list
 * a document type, so it is searched rather than parsed.
 */
function refuseEncrypted(parts: PackageParts): void {
  const manifest = parts.bytes('META-INF/manifest.xml');
  if (manifest !== undefined && new TextDecoder().decode(manifest).includes('encryption-data')) {
    throw new FileProblem('The file is protected by a password; save a copy without one.');
  }
}
