import { eventKinds } from '../log/waterEvents.js';
import type { Treatment } from '../rules/treatment.js';

const firsts = new WeakMap<Treatment, number>();

/** In a log without doses the level rises by those that are not in it: nothing is odd before the band is reached. */
export function firstJudged(treatment: Treatment): number {
  const before = firsts.get(treatment);
  if (before !== undefined) return before;
  const { events, card } = treatment;
  let first = 0;
  if (!events.kind.includes(eventKinds.dose)) {
    const isHeld = (at: number): boolean =>
      events.kind[at] === eventKinds.reading && (events.amount[at] ?? 0) >= card.band.low;
    while (first < events.count && !isHeld(first)) first++;
    first++;
  }
  firsts.set(treatment, first);
  return first;
}
