import { addressOf } from '../address/addressOf.js';
import type { PlainReference } from './plainReference.js';

/** A reference as it is written in a formula. */
export function writeReference({ sheet, range, fixed, whole }: PlainReference): string {
  const prefix = sheet === undefined ? '' : `${quotedSheet(sheet)}!`;
  const first = end(range.firstRow, range.firstColumn, fixed.firstRow, fixed.firstColumn, whole);
  const last = end(range.lastRow, range.lastColumn, fixed.lastRow, fixed.lastColumn, whole);
  return `${prefix}${first === last && whole === undefined ? first : `${first}:${last}`}`;
}

function end(
  row: number,
  column: number,
  fixedRow: boolean,
  fixedColumn: boolean,
  whole: PlainReference['whole'],
): string {
  const letters = whole === 'rows' ? '' : `${fixedColumn ? '$' : ''}${addressOf(0, column).slice(0, -1)}`;
  const digits = whole === 'columns' ? '' : `${fixedRow ? '$' : ''}${row + 1}`;
  return letters + digits;
}

/** Quotes where a reader could take the name for something else. */
function quotedSheet(sheet: string): string {
  const isPlain = /^[\p{L}_][\p{L}\p{N}_]*$/u.test(sheet) && !/^(?:[A-Z]{1,3}\d+|R\d*C?\d*|C\d*)$/i.test(sheet);
  return isPlain ? sheet : `'${sheet.replaceAll("'", "''")}'`;
}
