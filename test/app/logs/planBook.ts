import { cellRange } from '../../../src/sheet/address/cellRange.js';
import type { SheetPlan } from '../../../src/app/templates/demo/sheetPlan.js';
import type { Book, BookCell } from '../../../src/sheet/book/book.js';
import { bookOf } from './bookOf.js';

/** A workbook planned as data, as a book; formulas without a value, each filling its own cell. */
export function planBook(plans: readonly SheetPlan[]): Book {
  return bookOf(Object.fromEntries(plans.map((plan) => [plan.name, rowsOf(plan)])));
}

function rowsOf({ blocks }: SheetPlan): (BookCell | null)[][] {
  const rows: (BookCell | null)[][] = [];
  for (const { at, cells } of blocks) {
    const { firstRow, firstColumn } = cellRange(at);
    for (const [r, line] of cells.entries()) {
      const row = (rows[firstRow + r] ??= []);
      for (const [c, value] of line.entries()) {
        if (value === null) continue;
        const isFormula = typeof value === 'string' && value.startsWith('=');
        row[firstColumn + c] = isFormula ? { value: null, formula: value.slice(1) } : { value };
      }
    }
  }
  return Array.from(rows, (row: (BookCell | null)[] | undefined) => Array.from(row ?? [], (cell) => cell ?? null));
}
