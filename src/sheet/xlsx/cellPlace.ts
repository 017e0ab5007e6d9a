import { bookLimits } from '../book/bookLimits.js';

/** `"C7"` as one number, row times 16,384 plus column, both from 0; -1 for what is no place of a sheet. Read for every cell. */
export function cellPlace(address: string): number {
  let column = 0;
  let at = 0;
  for (; at < address.length; at++) {
    const letter = address.charCodeAt(at) & ~32;
    if (letter < 65 || letter > 90) break;
    column = column * 26 + letter - 64;
  }
  if (at === 0 || at > 3 || at === address.length || column > bookLimits.columns) return -1;
  let row = 0;
  for (; at < address.length; at++) {
    const digit = address.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9) return -1;
    row = row * 10 + digit;
    if (row > bookLimits.rows) return -1;
  }
  return row === 0 ? -1 : (row - 1) * bookLimits.columns + column - 1;
}
