import { isCellError, errorCell, type CellError, type CellValue } from '../cell/cellValue.js';
import { numberInText } from './numberInText.js';

/** A cell as a number: a blank is 0, TRUE is 1, a text is the number or time it spells. */
export function cellNumber(value: CellValue): number | CellError {
  if (typeof value === 'number') return value;
  if (value === null) return 0;
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (isCellError(value)) return value;
  return numberInText(value) ?? errorCell('#VALUE!');
}

/** A cell as a condition: any number but 0 is true, a text only if it says TRUE or FALSE. */
export function cellTruth(value: CellValue): boolean | CellError {
  if (typeof value === 'boolean') return value;
  if (value === null) return false;
  if (typeof value === 'number') return value !== 0;
  if (isCellError(value)) return value;
  const word = value.trim().toUpperCase();
  return word === 'TRUE' ? true : word === 'FALSE' ? false : errorCell('#VALUE!');
}

/** A cell joined to a text: a number with at most 15 digits, as an unformatted cell shows it. */
export function cellAsText(value: Exclude<CellValue, CellError>): string {
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'string') return value;
  const rounded = Number(value.toPrecision(15));
  const size = Math.abs(rounded);
  if (size !== 0 && (size >= 1e21 || size < 1e-9)) {
    const [digits = '', power = '0'] = rounded.toExponential().split('e');
    const sign = Number(power) < 0 ? '-' : '+';
    return `${digits}E${sign}${String(Math.abs(Number(power))).padStart(2, '0')}`;
  }
  return size !== 0 && size < 1e-6 ? rounded.toFixed(20).replace(/0+$/, '') : String(rounded);
}
