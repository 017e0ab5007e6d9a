import { isCellError, type CellError, type CellValue } from '../cell/cellValue.js';
import { errorCell } from './value.js';

/** A cell as a condition: a number is true but for 0, a text only as TRUE or FALSE. */
export function cellTruth(value: CellValue): boolean | CellError {
  if (typeof value === 'boolean') return value;
  if (value === null) return false;
  if (typeof value === 'number') return value !== 0;
  if (isCellError(value)) return value;
  const word = value.trim().toUpperCase();
  return word === 'TRUE' ? true : word === 'FALSE' ? false : errorCell('#VALUE!');
}
