import { type Book, type BookSheet, cellRange, type CellRange, FileProblem } from '../../sheet/index.js';
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

const address =
  /^(?:(?:'((?:[^']|'')+)'|([^'!]+))!)?(\$?[a-z]{1,3}(?:\$?[1-9]\d*)?(?::\$?[a-z]{1,3}(?:\$?[1-9]\d*)?)?)$/i;

/** The cells that an address or a name stands for. */
export function placedRange({ book, text, home }: AskedRange): PlacedRange {
  const asked = text.trim().replace(/^=/, '');
  const table = book.tables.find(({ name }) => isSameName(name, asked.replace(/\[#all\]$/i, '')));
  if (table !== undefined) return { sheet: sheetNamed(book, table.sheet), range: table.range };
  const names = book.names.filter(({ name }) => isSameName(name, asked));
  const name = names.find(({ sheet }) => sheet !== undefined && isSameName(sheet, home)) ?? names[0];
  const [, quoted, plain, cells] = address.exec(name?.formula.trim() ?? asked) ?? [];
  if (cells === undefined) {
    throw new FileProblem(
      `"${text}" is no range of the file; write it like Card!A1:B12, or give the name of a range or table`,
    );
  }
  const sheet = sheetNamed(book, quoted?.replace(/''/g, "'") ?? plain?.trim() ?? name?.sheet ?? home);
  return { sheet, range: rangeIn(sheet, cells.replace(/\$/g, '').toUpperCase()) };
}

/** Whole columns end with the sheet. */
function rangeIn(sheet: BookSheet, cells: string): CellRange {
  const last = Math.max(sheet.rows.length, 1);
  const [from = '', to = from] = cells.split(':');
  const written = cellRange(`${/\d/.test(from) ? from : `${from}1`}:${/\d/.test(to) ? to : `${to}${last}`}`);
  return {
    firstRow: Math.min(written.firstRow, written.lastRow),
    firstColumn: Math.min(written.firstColumn, written.lastColumn),
    lastRow: Math.min(Math.max(written.firstRow, written.lastRow), Math.max(last - 1, 0)),
    lastColumn: Math.max(written.firstColumn, written.lastColumn),
  };
}
