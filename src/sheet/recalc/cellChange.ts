import type { CellPlace } from '../address/cellRange.js';
import type { CellValue } from '../cell/cellValue.js';

/** A cell whose stored value is no longer what its formula gives. */
export interface CellChange extends CellPlace {
  /** As typed, without the `=`; '' for a cell filled, or filled no longer, by the array formula of another. */
  readonly formula: string;
  readonly was: CellValue;
  readonly is: CellValue;
  /** Why it is an error. */
  readonly reason?: string;
  /** A moment, counted from 1900; not said of one that a file stores as a bare number from 1904 on. */
  readonly isTime?: boolean;
  /** The cell whose array formula fills this one. */
  readonly anchor?: { readonly row: number; readonly column: number };
}
