import { isLongEnough } from '../hold/holdEnds.js';
import { heldDays } from '../hold/heldFrom.js';
import type { Hold } from '../hold/traceHolds.js';
import { instantDays } from '../units/quantity.js';
import type { Treatment } from './treatment.js';

/**
 * The holds that came before one was long enough, in time order; after that one nothing can be lost any more. One over
 * before the arrival is left out.
 */
export function shortHolds({ trace, terms, card }: Treatment): readonly Hold[] {
  const { arrived = -Infinity } = terms;
  const enough = trace.holds.findIndex((hold) => isLongEnough(heldDays(hold, terms.arrived), card.days));
  const before = enough < 0 ? trace.holds : trace.holds.slice(0, enough);
  return before.filter((hold) => hold.endedBy.kind === 'running' || hold.to > arrived - instantDays);
}
