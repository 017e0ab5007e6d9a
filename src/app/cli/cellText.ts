import { isoFromSerial } from '../../engine/index.js';
import { type CellValue, isCellError } from '../../sheet/index.js';
import { printable } from './printable.js';

/** One cell as text: a number with all its digits, or as a date and time. */
export function cellText(value: CellValue, isTime: boolean): string {
  if (value === null) return '';
  if (isCellError(value)) return value.basicValue;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'number') return isTime ? isoFromSerial(value) : String(value);
  return printable(value).replace(/[\t\n]/g, ' ');
}
