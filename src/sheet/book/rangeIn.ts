import type { CellRange } from '../address/cellRange.js';
import { bookLimits } from './bookLimits.js';

/** `"B2:D9"`, also with dollar signs, as numbers; undefined for what is no range of a sheet. */
export function rangeIn(text: string | undefined): CellRange | undefined {
  const parts = /^\$?([A-Za-z]{1,3})\$?(\d{1,7})(?::\$?([A-Za-z]{1,3})\$?(\d{1,7}))?$/.exec(text ?? '');
  if (parts === null) return undefined;
  const [, left = '', top = '', right = left, bottom = top] = parts;
  const range = {
    firstRow: Number(top) - 1,
    firstColumn: columnOf(left),
    lastRow: Number(bottom) - 1,
    lastColumn: columnOf(right),
  };
  const stands =
    range.firstRow >= 0 &&
    range.firstRow <= range.lastRow &&
    range.lastRow < bookLimits.rows &&
    range.firstColumn <= range.lastColumn &&
    range.lastColumn < bookLimits.columns;
  return stands ? range : undefined;
}

function columnOf(letters: string): number {
  let column = 0;
  for (let i = 0; i < letters.length; i++) column = column * 26 + (letters.charCodeAt(i) & 31);
  return column - 1;
}
