import { cellRange, oneCell } from '../../../sheet/index.js';
import type { Look } from './look.js';
import type { Corner, Part, ToneRule } from './templatePlan.js';

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

/** One text, or one answer, alone in its row or its corner of the sheet: a title, a note, the heading of a section. */
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
