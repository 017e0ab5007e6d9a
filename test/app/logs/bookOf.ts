import { cellRange } from '../../../src/sheet/address/cellRange.js';
import type { CellValue } from '../../../src/sheet/cell/cellValue.js';
import type { Book, BookCell, BookSheet, BookTable, DefinedName } from '../../../src/sheet/book/book.js';
import { FileProblem } from '../../../src/sheet/zip/fileProblem.js';

export type Written = CellValue | BookCell;

interface Extras {
  readonly hidden?: readonly string[];
  readonly names?: readonly DefinedName[];
  readonly tables?: readonly BookTable[];
}

/** A book of sheets given as rows of values; null is an empty cell, a BookCell stands for itself. */
export function bookOf(sheets: Readonly<Record<string, readonly (readonly Written[])[]>>, extras: Extras = {}): Book {
  return {
    kind: 'xlsx',
    sheets: Object.entries(sheets).map(([name, rows]) => sheetOf(name, rows, extras.hidden?.includes(name) ?? false)),
    names: extras.names ?? [],
    tables: extras.tables ?? [],
    date1904: false,
    remarks: [],
  };
}

function sheetOf(name: string, rows: readonly (readonly Written[])[], hidden: boolean): BookSheet {
  const cells = rows.map((row) => (row.length === 0 ? undefined : row.map(cellOf)));
  return { name, hidden, rows: cells, merged: [], widths: [] };
}

function cellOf(written: Written): BookCell | undefined {
  if (written === null) return undefined;
  return typeof written === 'object' && 'value' in written ? written : { value: written as CellValue };
}

/** The first cell of an array formula that fills a range. */
export function filling(value: CellValue, formula: string, fills: string): BookCell {
  return { value, formula, fills: cellRange(fills), dynamic: true };
}

/** Rows set beside each other, with so many empty columns between. */
export function beside(
  left: readonly (readonly Written[])[],
  right: readonly (readonly Written[])[],
  gap = 1,
): Written[][] {
  const width = Math.max(...left.map((row) => row.length));
  return Array.from({ length: Math.max(left.length, right.length) }, (_, at) => {
    const row = left[at] ?? [];
    return [...row, ...Array<null>(width - row.length + gap).fill(null), ...(right[at] ?? [])];
  });
}

/** Why something is refused; '' where it is not. */
export function refusal(act: () => unknown): string {
  try {
    act();
    return '';
  } catch (fault) {
    if (fault instanceof FileProblem) return fault.message;
    throw fault;
  }
}
