import type { Problem } from '../../result/problem.js';
import type { ColumnKind } from '../headings/columnKinds.js';
import type { HeadingRead } from '../headings/readHeadings.js';
import type { Level } from '../reading.js';

/** Columns of numbers beside the copper; NaN where a row says nothing. */
export type NumberKind =
  | 'dose'
  | 'change'
  | 'replacement'
  | 'top-off'
  | 'salinity'
  | 'temperature'
  | 'pH'
  | 'ammonia'
  | 'oxygen'
  | 'nitrite'
  | 'volume'
  | 'hold day';

/** Columns of text; '' where a row says nothing. */
type TextKind = 'fish in' | 'fish out' | 'dead' | 'signs' | 'note' | 'flukes' | 'system' | 'lot' | 'who';

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
  /** Columns that say something under a heading nobody knows. */
  readonly unread: readonly HeadingRead[];
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
  /** 1 where the replacement water was brought to the tank's level first; such a row has no replacement level. */
  readonly replacementMatched: Uint8Array | null;
  readonly texts: Readonly<Record<TextKind, readonly string[] | null>>;
  /** By row. */
  readonly faults: readonly RowFault[];
  /** Rows whose copper cell is a bare 0. */
  readonly zeroRows: readonly number[];
  readonly hasBlanks: boolean;
}

/** Some of a log's entries, in their order, and the faults that the test lets stand. */
export function logEntries(log: Log, entries: Uint32Array, keepsFault: (when: number, row: number) => boolean): Log {
  const text = (column: readonly string[] | null): readonly string[] | null =>
    column === null ? null : Array.from(entries, (from) => column[from] ?? '');
  return {
    headings: log.headings,
    unread: log.unread,
    count: entries.length,
    row: Uint32Array.from(entries, (from) => log.row[from] ?? 0),
    when: Float64Array.from(entries, (from) => log.when[from] ?? NaN),
    dateOnly: Uint8Array.from(entries, (from) => log.dateOnly[from] ?? 0),
    copper: Uint8Array.from(entries, (from) => log.copper[from] ?? 0),
    low: Float64Array.from(entries, (from) => log.low[from] ?? NaN),
    odd: log.odd,
    zeroRows: log.zeroRows,
    hasBlanks: log.hasBlanks,
    numbers: numbersOf((kind) => picked(log.numbers[kind], entries)),
    changeShare: picked(log.changeShare, entries),
    replacementMatched:
      log.replacementMatched === null ? null : Uint8Array.from(entries, (from) => log.replacementMatched?.[from] ?? 0),
    texts: textsOf((kind) => text(log.texts[kind])),
    faults: log.faults.filter(({ when, row }) => keepsFault(when, row)),
  };
}

function picked(column: Float64Array | null, entries: Uint32Array): Float64Array | null {
  return column === null ? null : Float64Array.from(entries, (from) => column[from] ?? NaN);
}

// Written out: the shape of an object put together by a loop or a spread is thrown away by each collection, and with it
// what was optimised for it.

/** The columns of numbers of a log, one after another. */
export function numbersOf(column: (kind: NumberKind) => Float64Array | null): Log['numbers'] {
  return {
    dose: column('dose'),
    change: column('change'),
    replacement: column('replacement'),
    'top-off': column('top-off'),
    salinity: column('salinity'),
    temperature: column('temperature'),
    pH: column('pH'),
    ammonia: column('ammonia'),
    oxygen: column('oxygen'),
    nitrite: column('nitrite'),
    volume: column('volume'),
    'hold day': column('hold day'),
  };
}

/** The columns of text of a log, one after another. */
export function textsOf(column: (kind: TextKind) => readonly string[] | null): Log['texts'] {
  return {
    'fish in': column('fish in'),
    'fish out': column('fish out'),
    dead: column('dead'),
    signs: column('signs'),
    note: column('note'),
    flukes: column('flukes'),
    system: column('system'),
    lot: column('lot'),
    who: column('who'),
  };
}
