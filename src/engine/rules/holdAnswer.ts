import { heldDays } from '../hold/heldFrom.js';
import { holdDays } from '../hold/holdDays.js';
import type { HoldTerms } from '../hold/holdTerms.js';
import type { HoldTrace, Hold } from '../hold/holdTrace.js';
import { isLongEnough } from '../hold/holdEnds.js';
import { secondDays } from '../units/quantity.js';
import type { Treatment } from './treatment.js';

/** Whether the fish have had their days. */
export interface HoldAnswer {
  readonly kind: 'complete' | 'running' | 'not complete';
  /** Of the hold that was long enough, else of the running one; 0 where there is neither. */
  readonly days: number;
}

/**
 * Whether a hold was long enough, or one runs.
 *
 * Definition: complete where a hold lasted the wanted days to its last reading; else running where one runs. A running
 * hold's days go to `as of`, as in `holdDays`.
 *
 * @param trace holds of the readings
 * @param terms what counts as a hold
 * @param wanted unbroken days [days]
 * @returns the answer
 */
export function holdAnswer(trace: HoldTrace, terms: HoldTerms, wanted: number): HoldAnswer {
  const enough = firstLongEnough(trace, terms, wanted);
  if (enough !== null && enough !== trace.running) return { kind: 'complete', days: heldDays(enough, terms.arrived) };
  const held = holdDays(trace, terms);
  const kind = enough !== null ? 'complete' : trace.running !== null ? 'running' : 'not complete';
  return { kind, days: held.ok ? held.value : 0 };
}

/** The first hold that lasted the wanted days to its last reading; null: none did. */
export function firstLongEnough({ holds }: HoldTrace, { arrived }: HoldTerms, wanted: number): Hold | null {
  return holds.find((hold) => isLongEnough(heldDays(hold, arrived), wanted)) ?? null;
}

/** From when on the wanted days have been held: copper may be taken out. Infinity: not within the log. [serial day] */
export function holdReached({ trace, terms, card }: Treatment): number {
  const enough = trace.holds.find((hold) => heldDays(hold, terms.arrived) >= card.days - secondDays);
  return enough === undefined ? Infinity : enough.to - heldDays(enough, terms.arrived) + card.days;
}
