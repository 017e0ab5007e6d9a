import type { CellPlace } from '../address/cellRange.js';
import { errorCell } from '../cell/cellValue.js';
import { isGrid, Area, type Scope, type Value } from './value.js';

/** The one cell of a range that a formula of old means: in a column the cell of its row, in a row that of its column. */
export function intersection(area: Area, { row, column }: CellPlace): Value {
  if (area.isOneCell) return area;
  const { firstRow, lastRow, firstColumn, lastColumn } = area.range;
  const at = (r: number, c: number): Area =>
    new Area(area.sheet, { firstRow: r, lastRow: r, firstColumn: c, lastColumn: c });
  if (area.columnCount === 1 && row >= firstRow && row <= lastRow) return at(row, firstColumn);
  if (area.rowCount === 1 && column >= firstColumn && column <= lastColumn) return at(firstRow, column);
  return errorCell('#VALUE!');
}

/** One value: of a range the cell beside the formula, of an array the first. */
export function single(of: Value, { place }: Scope): Value {
  if (of instanceof Area) return intersection(of, place);
  return isGrid(of) ? (of[0]?.[0] ?? null) : of;
}
