import { type Book, type BookCell, type BookSheet, callsOutside, cellRange } from '../../sheet/index.js';
import { qtNames } from '../calls/outsideFunctions.js';
import type { TemplatePlan } from './templatePlan.js';

/** The book with its formulas of ours, and the others that a plan calls arrays, free to fill as many cells as they need. */
export function withArrays(book: Book, plan: TemplatePlan): Book {
  return { ...book, sheets: book.sheets.map((sheet) => sheetWithArrays(sheet, plan)) };
}

function sheetWithArrays(sheet: BookSheet, plan: TemplatePlan): BookSheet {
  const named = plan.sheets.find(({ name }) => name === sheet.name)?.arrays ?? [];
  const arrays = new Set(named.map((at) => placeOf(cellRange(at).firstRow, cellRange(at).firstColumn)));
  const rows = sheet.rows.map((cells, row) =>
    cells?.map((cell, column) => {
      if (cell?.formula === undefined) return cell;
      return callsOutside(cell.formula, qtNames) || arrays.has(placeOf(row, column))
        ? dynamic(cell, row, column)
        : cell;
    }),
  );
  return { ...sheet, rows };
}

function dynamic(cell: BookCell, row: number, column: number): BookCell {
  return { ...cell, dynamic: true, fills: { firstRow: row, firstColumn: column, lastRow: row, lastColumn: column } };
}

const placeOf = (row: number, column: number): string => `${row},${column}`;
