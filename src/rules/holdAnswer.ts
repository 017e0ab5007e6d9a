import { heldDays } from '../hold/heldFrom.js';
import { holdDays } from '../hold/holdDays.js';
import { isLongEnough } from '../hold/holdEnds.js';
import type { HoldTerms } from '../hold/holdTerms.js';
import { traceHolds, type Hold, type HoldTrace } from '../hold/traceHolds.js';
import type { ReadingColumns } from '../log/readingColumns.js';

export interface HoldAnswer {
  readonly kind: 'complete' | 'running' | 'not complete';
  /** Of the first hold that was long enough, else of the running one, else of none: 0. [days] */
  readonly days: number;
}

/**
 * Whether a hold was long enough, or one runs.
 *
 * Definition: complete where a hold lasted the wanted days to its last reading; else running where one runs.
 *
 * @param columns readings in time order
 * @param terms what counts as a hold
 * @param wanted unbroken days [days]
 * @returns the answer
 */
export function holdAnswer(columns: ReadingColumns, terms: HoldTerms, wanted: number): HoldAnswer {
  return answerOf(traceHolds(columns, terms), terms, wanted);
}

/** The same of holds that are traced. */
export function answerOf(trace: HoldTrace, terms: HoldTerms, wanted: number): HoldAnswer {
  const enough = firstLongEnough(trace, terms, wanted);
  if (enough !== null && enough !== trace.running) return { kind: 'complete', days: heldDays(enough, terms.arrived) };
  const held = holdDays(trace, terms);
  const days = held.ok ? held.value : 0;
  if (enough !== null) return { kind: 'complete', days };
  return { kind: trace.running === null ? 'not complete' : 'running', days };
}

/** The first hold that lasted the wanted days to its last reading. */
export function firstLongEnough({ holds }: HoldTrace, { arrived }: HoldTerms, wanted: number): Hold | null {
  return holds.find((hold) => isLongEnough(heldDays(hold, arrived), wanted)) ?? null;
}
