import { type CsvOptions, readCsv } from '../../../src/sheet/csv/readCsv.js';
import type { CellValue } from '../../../src/sheet/cell/cellValue.js';
import type { Book } from '../../../src/sheet/book/book.js';
import { FileProblem } from '../../../src/sheet/zip/fileProblem.js';

const encoder = new TextEncoder();

export function csvBook(text: string, options?: CsvOptions, name = 'log.csv'): Book {
  return readCsv(encoder.encode(text), name, options);
}

/** The values of a csv text, cells that are not there as null. */
export function csvValues(text: string, options?: CsvOptions, name?: string): CellValue[][] {
  const rows = csvBook(text, options, name).sheets[0]?.rows ?? [];
  return Array.from(rows, (row) => Array.from(row ?? [], (cell) => cell?.value ?? null));
}

/** Why a csv text is refused; '' where it is not. */
export function csvRefusal(text: string, options?: CsvOptions, name?: string): string {
  try {
    csvBook(text, options, name);
    return '';
  } catch (fault) {
    if (fault instanceof FileProblem) return fault.message;
    throw fault;
  }
}
