import { heldDays } from '../hold/heldFrom.js';
import { secondDays } from '../units/quantity.js';
import type { Treatment } from './treatment.js';

/** From when on the wanted days have been held: copper may be taken out. Infinity: not within the log. [serial day] */
export function holdReached({ trace, terms, card }: Treatment): number {
  const enough = trace.holds.find((hold) => heldDays(hold, terms.arrived) >= card.days - secondDays);
  return enough === undefined ? Infinity : enough.to - heldDays(enough, terms.arrived) + card.days;
}
