import { sheetLimits } from './sheetLimits.js';

/** One number for a cell of a sheet: a file has millions of them. */
export function cellKey(row: number, column: number): number {
  return row * sheetLimits.columns + column;
}

/** `"C7"` as the one number of its cell; undefined for what is no cell of a sheet. */
export function cellKeyIn(address: string): number | undefined {
  let at = 0;
  while (isLetter(address.charCodeAt(at))) at += 1;
  const column = at === 0 || at > 3 ? undefined : columnNumber(address, at);
  if (column === undefined || at === address.length || column >= sheetLimits.columns) return undefined;
  let row = 0;
  for (; at < address.length; at += 1) {
    const digit = address.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9) return undefined;
    row = row * 10 + digit;
    if (row > sheetLimits.rows) return undefined;
  }
  return row === 0 ? undefined : cellKey(row - 1, column);
}

/** `"A"` is 0, `"aa"` 26: of a text the letters at its start alone. */
export function columnNumber(text: string, letters = text.length): number {
  let column = 0;
  for (let i = 0; i < letters; i += 1) column = column * 26 + (text.charCodeAt(i) & 31);
  return column - 1;
}

function isLetter(code: number): boolean {
  const capital = code & ~32;
  return capital >= 65 && capital <= 90;
}
