import type { CellValue } from '../cell/cellValue.js';
import { isDateFormat } from './isDateFormat.js';

const daysTo1904 = 1462;

/** A day of a file that counts from 1904, counted from 1900; what is below one is a clock time and stays. */
export function from1900(value: CellValue, format: string | undefined): CellValue {
  return typeof value === 'number' && value >= 1 && isDateFormat(format) ? value + daysTo1904 : value;
}
