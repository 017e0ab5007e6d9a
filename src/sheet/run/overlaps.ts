import type { CellRange } from '../address/cellRange.js';

/** Whether two ranges have a cell in common. */
export function overlaps(a: CellRange, b: CellRange): boolean {
  return (
    a.firstRow <= b.lastRow && b.firstRow <= a.lastRow && a.firstColumn <= b.lastColumn && b.firstColumn <= a.lastColumn
  );
}
