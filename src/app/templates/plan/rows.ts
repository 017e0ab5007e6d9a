import { cornerOf } from './line.js';
import type { Look } from './look.js';
import type { Content, Corner, Part } from './templatePlan.js';

interface RowsTerms {
  readonly at: string | Corner;
  readonly cells: readonly (readonly Content[])[];
  /** Of each column. */
  readonly looks: readonly Look[];
  /** From this column on, counted from 0, the columns of a row are one cell. */
  readonly mergedFrom?: number;
  /** Of each row, in points. */
  readonly heights?: readonly number[];
}

/** Rows of texts without headings of their own, each column in its look. */
export function rows({ at, cells, looks, mergedFrom, heights = [] }: RowsTerms): Part {
  const { row, column } = cornerOf(at);
  const lastRow = row + cells.length - 1;
  const lastColumn = column + looks.length - 1;
  return {
    cells: cells.flatMap((line, r) =>
      line.flatMap((content, c) => (content === null ? [] : [{ row: row + r, column: column + c, content }])),
    ),
    areas: looks.map((look, c) => ({
      range: { firstRow: row, lastRow, firstColumn: column + c, lastColumn: column + c },
      look,
    })),
    merged:
      mergedFrom === undefined
        ? []
        : cells.map((_, r) => ({ firstRow: row + r, lastRow: row + r, firstColumn: column + mergedFrom, lastColumn })),
    heights: heights.map((height, r) => ({ first: row + r, last: row + r, height })),
  };
}
