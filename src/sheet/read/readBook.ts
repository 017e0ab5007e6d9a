import type { CsvOptions } from '../csv/csvOptions.js';
import { readCsv } from '../csv/readCsv.js';
import { FileProblem } from '../zip/fileProblem.js';
import type { Book } from '../book/book.js';
import { fileKind } from './fileKind.js';
import { readPackage } from './readPackage.js';
import { refusalOf } from './refusalOf.js';

interface ReadOptions extends CsvOptions {
  /** Whether fonts, fills, borders, heights and the like are read too, for showing the book as its file has it. */
  readonly looks?: boolean;
}

/**
 * A file as a book, whatever it is called: the bytes say what it is, the name only helps with text.
 *
 * @param said what is wanted, and what is known of a file of text, which does not say it itself
 */
export function readBook(bytes: Uint8Array, name: string, { looks = false, ...said }: ReadOptions = {}): Book {
  const kind = fileKind(bytes);
  const refusal = refusalOf(kind);
  if (refusal !== undefined) throw new FileProblem(refusal);
  return kind === 'text' ? readCsv(bytes, name, said) : readPackage(bytes, looks);
}
