import type { BookCell, BookSheet, CellRange } from '../../sheet/index.js';

/** The cells that array formulas of a sheet fill, all of them or those that the test lets pass. */
export function filledRanges(sheet: BookSheet, fits: (cell: BookCell) => boolean = () => true): readonly CellRange[] {
  const filled: CellRange[] = [];
  for (const row of sheet.rows) {
    if (row === undefined) continue;
    for (const cell of row) if (cell?.fills !== undefined && fits(cell)) filled.push(cell.fills);
  }
  return filled;
}
