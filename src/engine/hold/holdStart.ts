import type { Problem } from '../result/problem.js';
import { ok, type Result } from '../result/result.js';
import { serialDay, type SerialDay } from '../units/quantity.js';
import { heldFrom } from './heldFrom.js';
import type { HoldTerms } from './holdTerms.js';
import { runningHold } from './runningHold.js';
import type { HoldTrace } from './holdTrace.js';

/**
 * When the running hold began.
 *
 * Definition: the start of the hold that the last reading belongs to, or the arrival if that is later.
 *
 * @param trace holds of the readings
 * @param terms what counts as a hold
 * @returns [serial day]
 */
export function holdStart(trace: HoldTrace, terms: HoldTerms): Result<SerialDay, Problem> {
  const running = runningHold(trace, terms);
  return running.ok ? ok(serialDay(heldFrom(running.value, terms.arrived))) : running;
}
