import { sheetLimits } from '../formula/sheetLimits.js';

/** One number for a cell of a sheet. */
export function cellKey(row: number, column: number): number {
  return row * sheetLimits.columns + column;
}
