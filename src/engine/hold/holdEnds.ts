import type { Problem } from '../result/problem.js';
import { ok, type Result } from '../result/result.js';
import { secondDays, serialDay, type SerialDay } from '../units/quantity.js';
import { heldDays, heldFrom } from './heldFrom.js';
import type { HoldTerms } from './holdTerms.js';
import { runningHold } from './runningHold.js';
import type { HoldTrace } from './holdTrace.js';

/**
 * When the first hold that was long enough reached the wanted days; else when the running one will, if it holds.
 *
 * Definition: start (or arrival) plus the wanted days; long enough holds to within a second.
 *
 * @param trace holds of the readings
 * @param terms what counts as a hold
 * @param wanted unbroken days [days]
 * @returns [serial day]
 */
export function holdEnds(trace: HoldTrace, terms: HoldTerms, wanted: number): Result<SerialDay, Problem> {
  const enough = trace.holds.find((hold) => isLongEnough(heldDays(hold, terms.arrived), wanted));
  const hold = enough === undefined ? runningHold(trace, terms) : ok(enough);
  return hold.ok ? ok(serialDay(heldFrom(hold.value, terms.arrived) + wanted)) : hold;
}

/** Limits of time hold to within a second. */
export function isLongEnough(held: number, wanted: number): boolean {
  return held >= wanted - secondDays;
}
