import type { BookSheet } from '../../sheet/index.js';

/** The last row of a sheet that holds a value or a formula, counted from 0; -1: none. Formats alone reach far below at times. */
export function lastRow({ rows }: BookSheet): number {
  let last = -1;
  rows.forEach((cells, row) => {
    if (cells?.some((cell) => cell !== undefined && (cell.value !== null || cell.formula !== undefined))) last = row;
  });
  return last;
}
