import type { ReadingColumns } from '../log/readingColumns.js';

/** A cell that is to count as a reading. */
export interface CountedCell {
  readonly row: number;
  /** [serial day] */
  readonly when: number;
  /** [mg/L] */
  readonly level: number;
}

/** The readings with some cells counted among them, in time order. */
export function readingsWithCells(readings: ReadingColumns, cells: readonly CountedCell[]): ReadingColumns {
  if (cells.length === 0) return readings;
  const added = [...cells].sort((a, b) => a.when - b.when);
  const count = readings.count + added.length;
  const columns = { when: new Float64Array(count), low: new Float64Array(count), row: new Uint32Array(count) };
  let next = 0;
  let read = 0;
  for (let index = 0; index < count; index++) {
    const cell = added[next];
    const when = readings.when[read] ?? NaN;
    const isCell = cell !== undefined && (read >= readings.count || cell.when < when);
    columns.when[index] = isCell ? cell.when : when;
    columns.low[index] = isCell ? cell.level : (readings.low[read] ?? NaN);
    columns.row[index] = isCell ? cell.row : (readings.row[read] ?? 0);
    if (isCell) next++;
    else read++;
  }
  return { ...readings, ...columns, count };
}
