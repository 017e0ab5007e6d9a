import type { DateParts } from './dateText.js';
import type { DecimalMark } from './numberBy.js';

/** A cell of a csv file as written; rows and columns from 0. */
export interface WrittenCell {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

export interface UnclearNumber extends WrittenCell {
  /** What stands around the number, such as "<" and " L"; '' and '' where the cell is the number alone. */
  readonly before: string;
  readonly after: string;
  /** What may stand before its decimals, or part its thousands. */
  readonly mark: DecimalMark;
}

export interface UnclearDate extends WrittenCell, DateParts {}

/** What the cells of a column show, and those that cannot be read one by one. */
export interface CsvColumn {
  /** The first cell that shows this mark before its decimals. */
  readonly shows: Record<DecimalMark, WrittenCell | null>;
  /** The same of numbers with a unit or a bound, which people type by hand: asked where no plain number shows a mark. */
  readonly tells: Record<DecimalMark, WrittenCell | null>;
  readonly numbers: UnclearNumber[];
  readonly dates: UnclearDate[];
  /** Headed as a time of day: 16.00 in it is an hour. */
  isClock: boolean;
}
