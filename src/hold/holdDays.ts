import type { ReadingColumns } from '../log/readingColumns.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { days, type Days } from '../units/quantity.js';
import { heldFrom } from './heldFrom.js';
import { creditedDays, type HoldTerms } from './holdTerms.js';
import { traceHolds } from './traceHolds.js';

/**
 * Days of the running hold, from its start to the last reading or to `asOf`.
 *
 * Definition: 0 where no hold runs; `asOf` is credited at most 36 h (or the longest gap, if shorter) past the last
 * reading; an arrival later than the start replaces it; never negative.
 *
 * @param columns readings in time order
 * @param terms what counts as a hold
 * @returns [days]
 */
export function holdDays(columns: ReadingColumns, terms: HoldTerms): Result<Days, Problem> {
  const { lastIndex, running } = traceHolds(columns, terms);
  if (lastIndex === null) return refuse({ code: 'no-reading' });
  if (running === null) return ok(days(0));
  const lastTest = columns.when[lastIndex] ?? NaN;
  const credited = lastTest + Math.min(creditedDays, terms.longestGap);
  const end = terms.asOf === undefined ? lastTest : Math.max(lastTest, Math.min(terms.asOf, credited));
  return ok(days(Math.max(0, end - heldFrom(running, terms.arrived))));
}
