import type { CellRange } from '../address/cellRange.js';

/** A reference as written, such as `'My log'!$A$2:B9`, in numbers. */
export interface PlainReference {
  /** Without quotes; undefined: the sheet of the formula. */
  readonly sheet?: string;
  readonly range: CellRange;
  /** Which of its ends stay where they are when the formula is copied elsewhere. */
  readonly fixed: Readonly<Record<keyof CellRange, boolean>>;
  /** Written as whole columns, such as `A:C`, or whole rows, such as `1:3`. */
  readonly whole?: 'columns' | 'rows';
}
