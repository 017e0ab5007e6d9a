import type { ReadingColumns } from '../log/readingColumns.js';
import type { Problem } from '../result/problem.js';
import { refuse, type Result } from '../result/result.js';
import { doubtfulZeros } from './doubtfulZeros.js';
import { readingsWithout } from './readingsWithout.js';

/** Doubtful rows are tried one by one for the row to name, over so many readings in all; past that the first is named. */
const readingsTried = 2_000_000;
const mostTries = 50;

/**
 * The answer to a question about a hold, unless it hangs on a bare 0 that may be an empty cell.
 *
 * Some hosts send an empty cell as 0. A 0 counts as read where the ranges show that this host tells the two apart, where
 * no reading at or above the low limit lies before it, or where the answer is the same with these rows untested.
 *
 * Definition: the answer with every such row untested must equal the answer as read.
 *
 * @param columns readings in time order
 * @param low low limit of the band [mg/L]
 * @param answer the question
 * @returns the answer, or the row to mend
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
