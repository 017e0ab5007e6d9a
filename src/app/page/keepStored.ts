import type { ICellData } from '@univerjs/core';
import { type Book, type BookSheet, callsOutside, type CellRange, isCellError } from '../../sheet/index.js';
import { qtNames } from '../calls/outsideFunctions.js';
import { cellKey, sheetId } from './gridKeys.js';
import { gridSheets } from './gridSheets.js';
import { keepingFormula } from './keptFormula.js';
import type { OpenedSheet } from './openSheet.js';
import { setCells } from './setCells.js';
import type { ShownFile } from './shownFile.js';
import { valueData } from './valueData.js';

type Cells = Record<number, Record<number, ICellData>>;

/**
 * Where the grid answers a formula with an error and the file holds a value, the grid cannot compute it: the stored value
 * is shown and the formula left out of the grid. QT formulas stay: their errors have a reason.
 *
 * @returns how many
 */
export function keepStored(sheet: OpenedSheet, book: Book, { formulas }: ShownFile): number {
  let kept = 0;
  for (const now of gridSheets(sheet)) {
    const index = book.sheets.findIndex((_, i) => sheetId(i) === now.id);
    const cells: Cells = {};
    now.rows.forEach((row, r) => {
      row?.forEach((cell, c) => {
        const stored = book.sheets[index]?.rows[r]?.[c];
        const known = formulas.get(cellKey(now.id, r, c));
        if (cell?.formula === undefined || !isCellError(cell.value) || known === undefined || !stored) return;
        if (stored.value === null || isCellError(stored.value) || callsOutside(known.typed, qtNames)) return;
        putFilled(cells, book.sheets[index], stored.fills);
        (cells[r] ??= {})[c] = { ...valueData(stored.value), ...keepingFormula(stored), f: null, si: null };
        formulas.set(cellKey(now.id, r, c), { ...known, plain: null });
        kept += 1;
      });
    });
    setCells(sheet, now.id, cells);
  }
  return kept;
}

/** What the file holds in the cells that an array formula fills. */
function putFilled(cells: Cells, sheet: BookSheet | undefined, fills: CellRange | undefined): void {
  if (fills === undefined) return;
  for (let row = fills.firstRow; row <= fills.lastRow; row++) {
    for (let column = fills.firstColumn; column <= fills.lastColumn; column++)
      (cells[row] ??= {})[column] = valueData(sheet?.rows[row]?.[column]?.value ?? null);
  }
}
