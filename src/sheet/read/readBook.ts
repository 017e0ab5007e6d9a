import type { Book } from '../book/book.js';
import { type CsvOptions, readCsv } from '../csv/readCsv.js';
import { readOds } from '../ods/readOds.js';
import { readXlsx } from '../xlsx/readXlsx.js';
import { relationsOf } from '../xlsx/relationsOf.js';
import { FileProblem } from '../zip/fileProblem.js';
import { type PackageParts, packageParts } from '../zip/packageParts.js';
import { zipEntries } from '../zip/zipEntries.js';
import { fileKind, refusalOf } from './fileKind.js';

interface ReadOptions extends CsvOptions {
  /** Whether fonts, fills, borders, heights and the like are read too, to show the book as it looks in its file. */
  readonly looks?: boolean;
}

/**
 * A file as a book, whatever it is called: the bytes say what it is, the name only helps with text.
 *
 * @param said what is known about a text file, which does not say it itself
 */
export function readBook(bytes: Uint8Array, name: string, { looks = false, ...said }: ReadOptions = {}): Book {
  const kind = fileKind(bytes);
  const refusal = refusalOf(kind);
  if (refusal !== undefined) throw new FileProblem(refusal);
  return kind === 'text' ? readCsv(bytes, name, said) : readPackage(bytes, looks);
}

const openSheet = 'application/vnd.oasis.opendocument.spreadsheet';

/** A workbook in a zip archive; its parts say which kind it is. */
function readPackage(bytes: Uint8Array, withLooks: boolean): Book {
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
  const isDocument = type !== '' || parts.has('[Content_Types].xml');
  return isDocument
    ? 'The file is another kind of document and no workbook; copy its table into a workbook and save that as .xlsx.'
    : 'The file is an archive with no workbook in it; unpack it, and give the workbook as .xlsx, .ods or .csv.';
}
