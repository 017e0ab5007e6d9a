import { type CellValue, isCellError } from '../../sheet/index.js';

/** Two programs add the same numbers up in another order: what differs less than this is the same. */
const tolerance = 1e-11;

/** Whether a cell that holds one shows the same as a cell that holds the other. */
export function sameValue(a: CellValue, b: CellValue): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b));
  if (isCellError(a) && isCellError(b)) return a.basicValue === b.basicValue;
  return a === b || (isEmpty(a) && isEmpty(b));
}

function isEmpty(value: CellValue): boolean {
  return value === null || value === '';
}
