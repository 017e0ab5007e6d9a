import { heldFrom } from '../../hold/heldFrom.js';
import { holdDays } from '../../hold/holdDays.js';
import { holdEnds } from '../../hold/holdEnds.js';
import { firstLongEnough } from '../../rules/holdAnswer.js';
import type { Treatment } from '../../rules/treatment.js';
import { fishDays } from '../fishDays.js';
import type { Gate } from './gate.js';

/**
 * Whether the days of the card are reached, by the tank and by every fish in it whose arrival is known.
 *
 * Definition: reached is held to a test; the 36 h credited past the last one reach nothing.
 */
export function daysGate(treatment: Treatment): Gate {
  const { trace, terms, card } = treatment;
  const name = 'days reached';
  const no = (why: Gate['why']): Gate => ({ name, met: 'no', since: null, why });
  const wanted = card.days;
  const enough = firstLongEnough(trace, terms, wanted);
  if (trace.holds.length === 0) return no({ code: 'no-hold' });
  if (enough === null) {
    const held = holdDays(trace, terms);
    const ends = holdEnds(trace, terms, wanted);
    return no({
      code: 'days',
      held: held.ok ? held.value : 0,
      wanted,
      readyOn: ends.ok ? ends.value : null,
      isTested: false,
    });
  }
  const since = heldFrom(enough, terms.arrived) + wanted;
  const fish = fishDays(treatment);
  const there = (fish.ok ? fish.value : []).filter(({ left, arrived }) => left === null && arrived !== null);
  const short = there.filter((each) => !each.enough);
  if (short.length > 0) {
    const dates = short.map(({ readyOn }) => readyOn);
    const readyOn = dates.reduce<number | null>(
      (latest, date) => (latest === null || date === null ? null : Math.max(latest, date)),
      0,
    );
    return no({ code: 'fish-short', fish: short.map((each) => each.fish), readyOn });
  }
  const last = there.reduce((latest, { readyOn }) => Math.max(latest, readyOn ?? latest), since);
  const held = enough.to - heldFrom(enough, terms.arrived);
  return { name, met: 'yes', since: last, why: { code: 'days', held, wanted, readyOn: last, isTested: true } };
}
