import type { BookSheet, CellValue } from '../../sheet/index.js';

/** What stands in a cell of a sheet, counted from 0; null where nothing does. */
export function valueAt(sheet: BookSheet, row: number, column: number): CellValue {
  return sheet.rows[row]?.[column]?.value ?? null;
}
