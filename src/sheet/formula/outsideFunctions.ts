import type { CellValue, Given } from '../cell/cellValue.js';

/** What the cell of a formula shows: one value, a table, or an error with the sentence behind it. */
export type Answer =
  | { readonly kind: 'cell'; readonly value: CellValue }
  | { readonly kind: 'table'; readonly rows: CellValue[][] }
  | { readonly kind: 'error'; readonly code: string; readonly message: string };

/** What a column holds: moments as serial days, numbers, words, shares from 0 to 1, or now one and now another. */
type ColumnKind = 'time' | 'number' | 'text' | 'share' | 'mixed';

/** What a function gives: values of one kind, or a table with these headings in its first row. */
type AnswerColumns = ColumnKind | readonly { readonly heading: string; readonly kind: ColumnKind }[];

/**
 * The functions that formulas can call and no spreadsheet program has. A name is as people type it, in capitals, and
 * begins with a namespace: `NS.NAME`; files hold `_xldudf_NS_NAME`.
 */
export interface OutsideFunctions {
  /** Whether a name is of this kind. The answer may be yes for every name of a namespace, known or not. */
  has(name: string): boolean;
  /** What a known function gives. The address is that of the calling cell, such as `Log!H4`. */
  call(name: string, given: readonly Given[], address: string): Answer;
  /** What a function gives; undefined where no function has this name. */
  columns(name: string): AnswerColumns | undefined;
}

/** All that reading and writing a formula takes. */
export type OutsideNames = Pick<OutsideFunctions, 'has'>;

/** Whether a function's answer holds moments: in a table under this heading, else in every cell. */
export function givesMoments(columns: AnswerColumns | undefined, heading: CellValue | undefined): boolean {
  if (columns === undefined || typeof columns === 'string') return columns === 'time';
  return columns.find((column) => column.heading === heading)?.kind === 'time';
}
