import type { Problem } from '../../result/problem.js';
import type { ColumnKind } from '../headings/columnKinds.js';
import type { HeadingRead } from '../headings/readHeadings.js';
import type { Level } from '../reading.js';

/** Columns of numbers beside the copper; NaN where a row says nothing. */
export type NumberKind =
  'dose' | 'change' | 'replacement' | 'top-off' | 'salinity' | 'temperature' | 'pH' | 'ammonia' | 'volume' | 'hold day';

/** Columns of text; '' where a row says nothing. */
export type TextKind = 'fish in' | 'fish out' | 'dead' | 'signs' | 'note' | 'system' | 'lot' | 'who';

/** A cell that could not be read, or a row without a time. The rest of the log is read all the same. */
export interface RowFault {
  readonly row: number;
  readonly kind: ColumnKind;
  readonly problem: Problem;
  /** The time of its row, NaN where that is the fault. [serial day] */
  readonly when: number;
}

/** What stands in a row's copper cell. */
export const copperStates = { none: 0, reading: 1, void: 2, fault: 3 } as const;

/**
 * A log as columns, entries in time order. Blank rows, repeated headings and totals are left out; every other row is an
 * entry, or a fault where it has no time.
 */
export interface Log {
  readonly headings: readonly HeadingRead[];
  readonly count: number;
  /** As people count: the range's first row is the `firstRow` that came with it. */
  readonly row: Uint32Array;
  /** [serial day] */
  readonly when: Float64Array;
  /** 1 where the row gives a date and no time of day. */
  readonly dateOnly: Uint8Array;
  /** One of copperStates. */
  readonly copper: Uint8Array;
  /** The low end, NaN without a reading. [mg/L] */
  readonly low: Float64Array;
  /** Readings that are more than a bare level, by row. */
  readonly odd: ReadonlyMap<number, Level>;
  /** null: the log has no such column. */
  readonly numbers: Readonly<Record<NumberKind, Float64Array | null>>;
  /** A change given as a share of the volume, 0 to 1. */
  readonly changeShare: Float64Array | null;
  readonly texts: Readonly<Record<TextKind, readonly string[] | null>>;
  /** By row. */
  readonly faults: readonly RowFault[];
  /** Rows whose copper cell is a bare 0. */
  readonly zeroRows: readonly number[];
  readonly hasBlanks: boolean;
}
