import { type Book, entered, formulaAsTyped, plainReferences } from '../../sheet/index.js';
import { qtNames } from '../calls/outsideFunctions.js';
import { cellKey, sheetId } from './gridKeys.js';
import type { CellFormula } from './shownFile.js';

/** The formulas of a book for the grid, which knows neither tables nor names: plain references in their place. */
export function gridFormulas({ sheets, tables, names }: Book): Map<string, CellFormula> {
  const formulas = new Map<string, CellFormula>();
  sheets.forEach((sheet, index) => {
    sheet.rows.forEach((cells, row) => {
      cells?.forEach((cell, column) => {
        if (cell?.formula === undefined) return;
        const typed = formulaAsTyped(cell.formula, qtNames);
        const plain = plainReferences(typed, { sheet: sheet.name, row, column, tables, names });
        formulas.set(cellKey(sheetId(index), row, column), {
          typed: entered(typed),
          plain: entered(plain),
          isStored: true,
        });
      });
    });
  });
  return formulas;
}
