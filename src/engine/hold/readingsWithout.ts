import type { ReadingColumns } from '../log/readingColumns.js';

/**
 * The same readings with some rows left out.
 *
 * Definition: every reading whose row is not among them, in their order.
 */
export function readingsWithout(columns: ReadingColumns, rows: readonly number[]): ReadingColumns {
  const left = new Set(rows);
  const keep = Array.from({ length: columns.count }, (_, index) => index).filter(
    (index) => !left.has(columns.row[index] ?? 0),
  );
  return {
    ...columns,
    count: keep.length,
    when: Float64Array.from(keep, (index) => columns.when[index] ?? NaN),
    low: Float64Array.from(keep, (index) => columns.low[index] ?? NaN),
    row: Uint32Array.from(keep, (index) => columns.row[index] ?? 0),
  };
}
