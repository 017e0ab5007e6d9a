import { cellRange, oneCell } from '../../../sheet/index.js';
import type { Look } from './looks.js';
import type { Content, Corner, Part, ToneRule } from './templatePlan.js';

interface LineTerms {
  /** How many columns have its look; if left out, one. */
  readonly columns?: number;
  readonly rows?: number;
  /** The columns, and rows, are one cell. */
  readonly isMerged?: boolean;
  /** In points. */
  readonly height?: number;
  readonly key?: string;
  readonly format?: string;
  readonly rules?: readonly ToneRule[];
}

/** One text or one answer by itself: a title, a note, the heading of a section. */
export function line(at: string | Corner, content: number | string, look: Look, terms: LineTerms = {}): Part {
  const { row, column } = cornerOf(at);
  const { columns = 1, rows = 1, isMerged = false, height, key, format, rules } = terms;
  const range = { firstRow: row, firstColumn: column, lastRow: row + rows - 1, lastColumn: column + columns - 1 };
  return {
    cells: content === '' ? [] : [{ row, column, content }],
    areas: [{ range, look, ...(format === undefined ? {} : { format }) }],
    ...(isMerged ? { merged: [range] } : {}),
    ...(height === undefined ? {} : { heights: [{ first: row, last: row, height }] }),
    ...(key === undefined ? {} : { places: { [key]: oneCell({ row, column }) } }),
    ...(rules === undefined ? {} : { conditions: [{ range, rules }] }),
  };
}

/** `A4` as row and column, counted from 0. */
export function cornerOf(at: string | Corner): Corner {
  if (typeof at !== 'string') return at;
  const { firstRow, firstColumn } = cellRange(at);
  return { row: firstRow, column: firstColumn };
}

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

/** Rows of texts without headings, each column in its own look. */
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
