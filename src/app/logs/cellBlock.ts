import type { BookSheet, CellRange, CellValue } from '../../sheet/index.js';
import { valueAt } from './valueAt.js';

/** The values of a rectangle, row by row. */
export function cellBlock(sheet: BookSheet, { firstRow, firstColumn, lastRow, lastColumn }: CellRange): CellValue[][] {
  const rows: CellValue[][] = [];
  for (let row = firstRow; row <= lastRow; row++) {
    const cells: CellValue[] = [];
    for (let column = firstColumn; column <= lastColumn; column++) cells.push(valueAt(sheet, row, column));
    rows.push(cells);
  }
  return rows;
}
