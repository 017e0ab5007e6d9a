import type { ReadingColumns } from '../log/readingColumns.js';
import type { Problem } from '../result/problem.js';
import { refuse, type Result } from '../result/result.js';
import { instantDays, levelTolerance } from '../units/quantity.js';

/** Doubtful rows are tried one by one for the row to name, over so many readings in all; past that the first is named. */
const readingsTried = 2_000_000;
const mostTries = 50;

/**
 * The answer to a question about a hold, unless it hangs on a bare 0 that may be an empty cell.
 *
 * Some hosts send an empty cell as 0. A 0 counts as read where the ranges show that this host separates the two, where
 * no reading at or above the low limit lies before it, or where the answer is the same with these rows untested.
 *
 * Definition: the answer with every such row untested must equal the answer as read.
 *
 * @param columns readings in time order
 * @param low low limit of the band [mg/L]
 * @param answer the question
 * @returns the answer, or the row to fix
 */
export function zeroOrUntested<T>(
  columns: ReadingColumns,
  low: number,
  answer: (columns: ReadingColumns) => Result<T, Problem>,
): Result<T, Problem> {
  const asRead = answer(columns);
  const doubtful = doubtfulZeros(columns, low);
  if (doubtful.length === 0) return asRead;
  const given = JSON.stringify(asRead);
  const differs = (rows: readonly number[]): boolean =>
    JSON.stringify(answer(readingsWithout(columns, rows))) !== given;
  if (!differs(doubtful)) return asRead;
  const tries = Math.floor(readingsTried / columns.count);
  const deciding = doubtful.slice(0, Math.min(mostTries, tries)).find((row) => differs([row]));
  return refuse({ code: 'zero-or-untested', row: deciding ?? doubtful[0] ?? 0 });
}

/**
 * Rows whose bare 0 may be an empty cell.
 *
 * Definition: where no empty cell arrived as such, the rows, lowest first, that read 0 after the level had once reached
 * the low limit.
 */
export function doubtfulZeros({ when, low, row, count, zeroRows, hasBlanks }: ReadingColumns, limit: number): number[] {
  if (hasBlanks || zeroRows.length === 0) return [];
  const zeros = new Set(zeroRows);
  const doubtful: number[] = [];
  let reached = NaN;
  for (let index = 0; index < count; index++) {
    const at = when[index] ?? NaN;
    if (Number.isNaN(reached) && (low[index] ?? NaN) >= limit - levelTolerance) reached = at;
    const rowNumber = row[index] ?? 0;
    if (at - reached >= instantDays && zeros.has(rowNumber)) doubtful.push(rowNumber);
  }
  return doubtful.sort((a, b) => a - b);
}

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
