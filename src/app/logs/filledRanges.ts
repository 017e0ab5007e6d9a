import type { BookCell, BookSheet, CellRange } from '../../sheet/index.js';

/**
 * The cells that array formulas of a sheet fill, all of them or those that the test lets pass. A formula that fills its own
 * cell alone is like any other: programs differ in whether they store that.
 */
export function filledRanges(sheet: BookSheet, fits: (cell: BookCell) => boolean = () => true): readonly CellRange[] {
  const filled: CellRange[] = [];
  for (const row of sheet.rows) {
    if (row === undefined) continue;
    for (const cell of row)
      if (cell?.fills !== undefined && !isOneCell(cell.fills) && fits(cell)) filled.push(cell.fills);
  }
  return filled;
}

function isOneCell({ firstRow, firstColumn, lastRow, lastColumn }: CellRange): boolean {
  return firstRow === lastRow && firstColumn === lastColumn;
}
