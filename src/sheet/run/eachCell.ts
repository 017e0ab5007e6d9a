import type { CellRange } from '../address/cellRange.js';

/** Visits the cells of a range, row by row. */
export function eachCell(range: CellRange, visit: (row: number, column: number) => void): void {
  for (let row = range.firstRow; row <= range.lastRow; row += 1) {
    for (let column = range.firstColumn; column <= range.lastColumn; column += 1) visit(row, column);
  }
}
