import type { Log } from './log.js';
import { numbersOf, textsOf } from './logColumns.js';

/** Some of a log's entries, in their order, and the faults that the test lets stand. */
export function logEntries(log: Log, entries: Uint32Array, keepsFault: (when: number, row: number) => boolean): Log {
  const text = (column: readonly string[] | null): readonly string[] | null =>
    column === null ? null : Array.from(entries, (from) => column[from] ?? '');
  return {
    headings: log.headings,
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
    texts: textsOf((kind) => text(log.texts[kind])),
    faults: log.faults.filter(({ when, row }) => keepsFault(when, row)),
  };
}

function picked(column: Float64Array | null, entries: Uint32Array): Float64Array | null {
  return column === null ? null : Float64Array.from(entries, (from) => column[from] ?? NaN);
}
