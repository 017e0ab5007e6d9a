import type { CellRange } from '../address/cellRange.js';

/** Whether a cell is one of a range. */
export function isInside(range: CellRange, row: number, column: number): boolean {
  return row >= range.firstRow && row <= range.lastRow && column >= range.firstColumn && column <= range.lastColumn;
}
