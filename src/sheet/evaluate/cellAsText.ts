import type { CellError, CellValue } from '../cell/cellValue.js';

/** A cell joined to a text: numbers with at most 15 figures, as an unformatted cell holds them. */
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
