import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { days, type Days } from '../units/quantity.js';
import { heldFrom } from './heldFrom.js';
import { creditedDays, type HoldTerms } from './holdTerms.js';
import type { HoldTrace } from './holdTrace.js';

/**
 * Days of the running hold, from its start to the last reading or to `asOf`.
 *
 * Definition: 0 where no hold runs; `asOf` is credited at most 36 h (or the longest gap, if shorter) past the last
 * reading; an arrival later than the start replaces it; never negative.
 *
 * @param trace holds of the readings
 * @param terms what counts as a hold
 * @returns [days]
 */
export function holdDays(trace: HoldTrace, terms: HoldTerms): Result<Days, Problem> {
  const { last, running } = trace;
  if (last === null) return refuse({ code: 'no-reading' });
  if (running === null) return ok(days(0));
  const credited = last.when + Math.min(creditedDays, terms.longestGap);
  const end = terms.asOf === undefined ? last.when : Math.max(last.when, Math.min(terms.asOf, credited));
  return ok(days(Math.max(0, end - heldFrom(running, terms.arrived))));
}
