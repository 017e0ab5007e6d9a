import { isCellError, type CellValue } from '../cell/cellValue.js';
import { guardedText } from './guardedText.js';
import { numberText } from './numberText.js';

/**
 * Rows as csv text, lines ended by CR and LF. A text that a program could take for a formula begins with an apostrophe,
 * which `readCsv` takes away again.
 */
export function csvText(rows: readonly (readonly CellValue[])[], delimiter = ','): string {
  return rows.map((row) => `${row.map((value) => field(value, delimiter)).join(delimiter)}\r\n`).join('');
}

/** All characters that some program separates fields with, besides the file's own. */
const quoted = /[",;|\t\r\n]|^\s|\s$|^sep=/i;

function field(value: CellValue, delimiter: string): string {
  if (value === null) return '';
  if (typeof value === 'number') return numberField(value, delimiter);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  const text = isCellError(value) ? value.basicValue : guardedText(value);
  return quoted.test(text) || text.includes(delimiter) ? `"${text.replace(/"/g, '""')}"` : text;
}

/** From here on, digits without an exponent are read as a name, not a number. */
const longestWhole = 1e15;

function numberField(value: number, delimiter: string): string {
  if (!Number.isFinite(value)) return '#NUM!';
  if (Math.abs(value) >= longestWhole) return value.toExponential();
  const text = String(value);
  // Where fields are not separated by commas, 1.234 could be thousands.
  return delimiter !== ',' && numberText(text)?.unclear === '.' ? `${text}0` : text;
}
