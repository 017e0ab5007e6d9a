import { Area, errorCell, type Value, type Place } from './value.js';

/** The one cell of a range that a formula of old means: in a column the cell of its row, in a row that of its column. */
export function intersection(area: Area, { row, column }: Place): Value {
  if (area.isOneCell) return area;
  const { firstRow, lastRow, firstColumn, lastColumn } = area.range;
  const at = (r: number, c: number): Area =>
    new Area(area.sheet, { firstRow: r, lastRow: r, firstColumn: c, lastColumn: c });
  if (area.columnCount === 1 && row >= firstRow && row <= lastRow) return at(row, firstColumn);
  if (area.rowCount === 1 && column >= firstColumn && column <= lastColumn) return at(firstRow, column);
  return errorCell('#VALUE!');
}
