import { addressOf } from '../address/addressOf.js';

/** `row 5, column C`. */
export function cellName({ row, column }: { readonly row: number; readonly column: number }): string {
  return `row ${row + 1}, column ${addressOf(0, column).slice(0, -1)}`;
}
