import type { Level } from './reading.js';

/**
 * The readings of two parallel ranges as columns: one number an entry, no object a row, so that a million rows pass.
 * Entries stand in time order, rows of one instant in row order.
 */
export interface ReadingColumns {
  /** How many readings there are; the arrays may be longer. */
  readonly count: number;
  /** [serial day] */
  readonly when: Float64Array;
  /** The low end. [mg/L] */
  readonly low: Float64Array;
  /** The n-th row of the range given, headings counted. */
  readonly row: Uint32Array;
  /** The readings that are more than a bare level, by row: bounds, ranges, approximate ones. */
  readonly odd: ReadonlyMap<number, Level>;
  /** Rows whose reading is a bare 0, which some hosts also send for an empty cell. */
  readonly zeroRows: readonly number[];
  /** An empty cell arrived as such somewhere in the ranges: this host separates 0 from blank. */
  readonly hasBlanks: boolean;
}

/** Takes readings in the order in which they stand in the rows. */
export interface ReadingSink {
  /** A time [serial day], the low end of the level [mg/L], and its row. */
  add(when: number, low: number, row: number): void;
}
