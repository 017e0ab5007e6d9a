import type { CellPlace } from '../address/cellRange.js';
import { errorCell } from '../cell/cellValue.js';
import { isGrid, Area, type Scope, type Value } from './value.js';

/** The one cell of a range that a formula without dynamic arrays means: of a column the cell in its row, of a row the one in its column. */
export function intersection(area: Area, { row, column }: CellPlace): Value {
  if (area.isOneCell) return area;
  const { firstRow, lastRow, firstColumn, lastColumn } = area.range;
  const at = (r: number, c: number): Area =>
    new Area(area.sheet, { firstRow: r, lastRow: r, firstColumn: c, lastColumn: c });
  if (area.columnCount === 1 && row >= firstRow && row <= lastRow) return at(row, firstColumn);
  if (area.rowCount === 1 && column >= firstColumn && column <= lastColumn) return at(firstRow, column);
  return errorCell('#VALUE!');
}

/** One value: of a range the cell beside the formula, of an array the first cell. */
export function single(of: Value, { place }: Scope): Value {
  if (of instanceof Area) return intersection(of, place);
  return isGrid(of) ? (of[0]?.[0] ?? null) : of;
}
