import type { CellRange } from '../../sheet/index.js';

/** Whether a cell lies in a rectangle. */
export function isWithin(range: CellRange, row: number, column: number): boolean {
  return range.firstRow <= row && row <= range.lastRow && range.firstColumn <= column && column <= range.lastColumn;
}
