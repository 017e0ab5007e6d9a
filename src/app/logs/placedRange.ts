import { type Book, type BookSheet, type CellRange, FileProblem, rangeIn } from '../../sheet/index.js';
import { rangeParts } from './rangeText.js';
import { isSameName, sheetNamed } from './sheetNamed.js';

interface PlacedRange {
  readonly sheet: BookSheet;
  readonly range: CellRange;
}

interface AskedRange {
  readonly book: Book;
  /** `Card!A1:B12`, `A1:B12`, `A:B`, a defined name, a table's name. */
  readonly text: string;
  /** The sheet of an address without one. */
  readonly home: string;
}

/** The cells that an address or a name stands for. */
export function placedRange({ book, text, home }: AskedRange): PlacedRange {
  const asked = text.trim().replace(/^=/, '');
  const table = book.tables.find(({ name }) => isSameName(name, asked.replace(/\[#all\]$/i, '')));
  if (table !== undefined) return { sheet: sheetNamed(book, table.sheet), range: table.range };
  const names = book.names.filter(({ name }) => isSameName(name, asked));
  const name = names.find(({ sheet }) => sheet !== undefined && isSameName(sheet, home)) ?? names[0];
  const parts = rangeParts(name?.formula ?? asked);
  const sheet = parts && sheetNamed(book, parts.sheet ?? name?.sheet ?? home);
  const range = sheet && rangeOf(sheet, parts.cells);
  if (sheet !== undefined && range !== undefined) return { sheet, range };
  throw new FileProblem(
    `"${text}" is not a range of the file; write it like Card!A1:B12, or give the name of a range or table`,
  );
}

/** Whole columns end with the sheet; undefined for what lies beyond any sheet. */
function rangeOf(sheet: BookSheet, cells: string): CellRange | undefined {
  const last = Math.max(sheet.rows.length, 1);
  const [from = '', to = from] = cells.split(':');
  const one = rangeIn(/\d/.test(from) ? from : `${from}1`);
  const other = rangeIn(/\d/.test(to) ? to : `${to}${last}`);
  if (one === undefined || other === undefined) return undefined;
  return {
    firstRow: Math.min(one.firstRow, other.firstRow),
    firstColumn: Math.min(one.firstColumn, other.firstColumn),
    lastRow: Math.min(Math.max(one.firstRow, other.firstRow), last - 1),
    lastColumn: Math.max(one.firstColumn, other.firstColumn),
  };
}
