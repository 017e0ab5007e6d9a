import { isCellError, type CellValue } from './cellValue.js';

/** Programs add the same numbers up in different orders: a smaller difference than this is none. */
const tolerance = 1e-12;

/** Whether two values look the same in a cell. */
export function sameCell(a: CellValue, b: CellValue): boolean {
  if (typeof a === 'number' && typeof b === 'number') {
    return a === b || Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b));
  }
  return a === b || (isCellError(a) && isCellError(b) && a.basicValue === b.basicValue);
}
