import type { CellPlace, CellRange } from '../address/cellRange.js';
import type { StoredFormula } from '../cell/formulaText.js';
import type { CellValue } from '../cell/cellValue.js';

/** What one cell is to hold. */
export interface CellWrite extends CellPlace {
  /** Days of a cell with a date format count from 1900, whatever the file counts from. */
  readonly value: CellValue;
  /** `undefined` keeps what is there, `null` takes it away. */
  readonly formula?: StoredFormula | null;
  /** The cells that the array formula of this cell fills. */
  readonly fills?: CellRange;
  /** Whether the formula given is an array that may grow and shrink. */
  readonly dynamic?: boolean;
  /** Asks for a date format where the cell has none. */
  readonly isDate?: boolean;
}
