import type { CellRange } from './cellRange.js';

/** Row 0, column 6 as `"G1"`. */
export function addressOf(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** Column 6 as `"G"`. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

/** A rectangle of cells as `"B2:D9"`. */
export function addressRange({ firstRow, firstColumn, lastRow, lastColumn }: CellRange): string {
  return `${addressOf(firstRow, firstColumn)}:${addressOf(lastRow, lastColumn)}`;
}
