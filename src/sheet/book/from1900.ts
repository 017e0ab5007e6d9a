import type { CellValue } from '../cell/cellValue.js';
import { dayFrom1904 } from '../cell/days1904.js';
import { isDateFormat } from './isDateFormat.js';

/** A value of a file that counts its days from 1904: what has a date format is counted from 1900. */
export function from1900(value: CellValue, format: string | undefined): CellValue {
  return typeof value === 'number' && isDateFormat(format) ? dayFrom1904(value) : value;
}
