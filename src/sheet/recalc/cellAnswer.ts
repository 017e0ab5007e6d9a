import type { CellPlace, CellRange } from '../address/cellRange.js';
import type { CellValue } from '../cell/cellValue.js';

/** What a cell of a book holds after its formula was worked out. */
export interface CellAnswer extends CellPlace {
  /** As typed, without the `=`; '' for a cell filled, or filled no longer, by the array formula of another. */
  readonly formula: string;
  /** null: nothing any more. Days count from 1900. */
  readonly value: CellValue;
  /** Why it is an error, or why the stored value stays. */
  readonly reason?: string;
  /** The stored value stays: the formula cannot be worked out here. */
  readonly isKept?: boolean;
  /** A moment, as the function and the heading above the cell say. */
  readonly isTime?: boolean;
  /** The cell whose array formula fills this one. */
  readonly anchor?: { readonly row: number; readonly column: number };
  /** The cells that the array formula of this cell fills now. */
  readonly fills?: CellRange;
}
