import { isLongEnough } from '../hold/holdEnds.js';
import { heldDays } from '../hold/heldFrom.js';
import type { HoldTerms } from '../hold/holdTerms.js';
import type { Hold, HoldTrace } from '../hold/holdTrace.js';

/** The first hold that lasted the wanted days to its last reading; null: none did. */
export function firstLongEnough({ holds }: HoldTrace, { arrived }: HoldTerms, wanted: number): Hold | null {
  return holds.find((hold) => isLongEnough(heldDays(hold, arrived), wanted)) ?? null;
}
