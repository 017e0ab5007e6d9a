import type { Log, NumberKind, TextKind } from './log.js';

/** Some of a log's entries, in their order, and the faults that the test lets stand. */
export function logEntries(log: Log, entries: Uint32Array, keepsFault: (when: number, row: number) => boolean): Log {
  const numbers = Object.entries(log.numbers).map(([kind, column]) => [kind, picked(column, entries)]);
  const texts = Object.entries(log.texts).map(([kind, column]) => [
    kind,
    column === null ? null : Array.from(entries, (from) => column[from] ?? ''),
  ]);
  return {
    ...log,
    count: entries.length,
    row: Uint32Array.from(entries, (from) => log.row[from] ?? 0),
    when: Float64Array.from(entries, (from) => log.when[from] ?? NaN),
    dateOnly: Uint8Array.from(entries, (from) => log.dateOnly[from] ?? 0),
    copper: Uint8Array.from(entries, (from) => log.copper[from] ?? 0),
    low: Float64Array.from(entries, (from) => log.low[from] ?? NaN),
    changeShare: picked(log.changeShare, entries),
    numbers: Object.fromEntries(numbers) as Record<NumberKind, Float64Array | null>,
    texts: Object.fromEntries(texts) as Record<TextKind, readonly string[] | null>,
    faults: log.faults.filter(({ when, row }) => keepsFault(when, row)),
  };
}

function picked(column: Float64Array | null, entries: Uint32Array): Float64Array | null {
  return column === null ? null : Float64Array.from(entries, (from) => column[from] ?? NaN);
}
