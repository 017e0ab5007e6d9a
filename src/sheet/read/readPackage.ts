import { FileProblem } from '../zip/fileProblem.js';
import { zipEntries } from '../zip/zipEntries.js';
import type { Book } from '../book/book.js';
import { readOds } from '../ods/readOds.js';
import { type PackageParts, packageParts } from '../zip/packageParts.js';
import { readXlsx } from '../xlsx/readXlsx.js';
import { relationsOf } from '../xlsx/relationsOf.js';

const openSheet = 'application/vnd.oasis.opendocument.spreadsheet';

/**
 * A workbook in a zip archive, told apart by what is in it.
 *
 * @param withLooks whether what its cells look like is read too
 */
export function readPackage(bytes: Uint8Array, withLooks = false): Book {
  const parts = packageParts(bytes, zipEntries(bytes));
  const type = new TextDecoder().decode(parts.bytes('mimetype') ?? new Uint8Array()).trim();
  if (type.startsWith(openSheet)) return readOds(parts, withLooks);
  const first = parts.has('_rels/.rels')
    ? relationsOf(parts, '').find((relation) => relation.type === 'officeDocument')?.part
    : undefined;
  if (first?.endsWith('.bin') === true || (first === undefined && parts.has('xl/workbook.bin'))) {
    throw new FileProblem(
      'The file is a binary workbook (.xlsb); open it in a spreadsheet program and save it as .xlsx.',
    );
  }
  if (first === undefined ? parts.has('xl/workbook.xml') : !isOtherDocument(first)) return readXlsx(parts, withLooks);
  throw new FileProblem(otherArchive(type, parts));
}

function isOtherDocument(part: string): boolean {
  return /^(?:word|ppt|visio|documents)\//i.test(part);
}

function otherArchive(type: string, parts: PackageParts): string {
  const document = type !== '' || parts.has('[Content_Types].xml');
  return document
    ? 'The file is another kind of document and no workbook; copy its table into a workbook and save that as .xlsx.'
    : 'The file is an archive with no workbook in it; unpack it, and give the workbook as .xlsx, .ods or .csv.';
}
