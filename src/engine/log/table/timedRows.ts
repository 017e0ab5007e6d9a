import { timeOrder } from '../timeOrder.js';
import type { RowFault } from './log.js';
import type { LogRange } from './logRange.js';
import type { TimeReader } from './rowTimes.js';
import type { Gallon } from './columnNumbers.js';

/** The rows of a log that have a time, in time order. */
interface TimedRows {
  readonly count: number;
  /** As people count, from the range's `firstRow` on. */
  readonly row: Uint32Array;
  /** [serial day] */
  readonly when: Float64Array;
  readonly dateOnly: Uint8Array;
  /** Rows without a readable time. */
  readonly faults: readonly RowFault[];
}

export function timedRows({ range, firstRow }: LogRange, kept: Uint32Array, times: TimeReader): TimedRows {
  const row = new Uint32Array(kept.length);
  const when = new Float64Array(kept.length);
  const dateOnly = new Uint8Array(kept.length);
  const faults: RowFault[] = [];
  let count = 0;
  let falls = false;
  let rises = false;
  const add = (index: number, time: number, isDateOnly: boolean): void => {
    const before = when[count - 1] ?? time;
    if (time < before) falls = true;
    else if (time > before) rises = true;
    row[count] = firstRow + index;
    when[count] = time;
    dateOnly[count++] = isDateOnly ? 1 : 0;
  };
  for (const index of kept) {
    const cells = range[index] ?? [];
    const plain = times.readPlain(cells);
    const time = Number.isNaN(plain) ? times.read(cells, firstRow + index) : plain;
    if (typeof time === 'number') add(index, time, time % 1 === 0);
    else if ('code' in time) faults.push({ row: firstRow + index, kind: 'time', problem: time, when: NaN });
    else add(index, time.when, time.dateOnly);
  }
  const unsorted = { count, row: row.subarray(0, count), when: when.subarray(0, count), dateOnly, faults };
  if (!falls) return unsorted;
  return rises ? inTimeOrder(unsorted) : newestLast(unsorted);
}

/** A log kept newest first: rows of one time stand the other way round too. */
function newestLast({ count, row, when, dateOnly, faults }: TimedRows): TimedRows {
  return { count, row: row.reverse(), when: when.reverse(), dateOnly: dateOnly.subarray(0, count).reverse(), faults };
}

function inTimeOrder({ count, row, when, dateOnly, faults }: TimedRows): TimedRows {
  const order = timeOrder(when, count);
  return {
    count,
    row: Uint32Array.from(order, (from) => row[from] ?? 0),
    when: Float64Array.from(order, (from) => when[from] ?? 0),
    dateOnly: Uint8Array.from(order, (from) => dateOnly[from] ?? 0),
    faults,
  };
}

/** What every column is read with. */
export interface ReadRows {
  readonly log: LogRange;
  readonly gallon: Gallon;
  readonly rows: TimedRows;
  /** Faults are added as they are found. */
  readonly faults: RowFault[];
}
