import { heldDays } from '../hold/heldFrom.js';
import { levelTolerance } from '../units/quantity.js';
import { countedHolds, type CountedHold } from './countedHolds.js';
import type { Finding } from './finding.js';
import { isStrayReading } from './isStrayReading.js';
import type { Rule } from './rule.js';
import { stoppedHold } from './stoppedHold.js';
import type { Treatment } from './treatment.js';
import { meterAccuracyOf } from './treatmentOf.js';

/**
 * A reading below the low limit breaks a hold: danger, a row for each break. Not where the hold was long enough, where
 * the copper was taken out, and not while the level still rises and a single reading just over the limit is followed by
 * one just under it.
 */
export const holdBroken: Rule = (treatment, named) => {
  const counted = countedHolds(treatment);
  const stopped = stoppedHold(treatment, named)?.counted.hold ?? null;
  const found: Finding[] = [];
  counted.forEach((one, index) => {
    const { hold, isEnough } = one;
    if (hold.endedBy.kind !== 'below' || isEnough || hold === stopped) return;
    if (isStrayReading(treatment, named, hold.endedBy.index)) return;
    if (hold.firstIndex === hold.lastIndex && isStrayReading(treatment, named, hold.firstIndex)) return;
    if (index === 0 && isCrossing(treatment, one)) return;
    found.push(broken(treatment, one, hold.endedBy.index, counted[index + 1]));
  });
  return found;
};

function broken(
  { readings, terms, card }: Treatment,
  { hold, from, end }: CountedHold,
  index: number,
  next: CountedHold | undefined,
): Finding {
  const row = readings.row[index] ?? 0;
  const level = readings.low[index] ?? NaN;
  return {
    code: 'hold-broken',
    severity: 'danger',
    when: end,
    row,
    source: 'Practice',
    level: readings.odd.get(row)?.under ?? level,
    isBound: readings.odd.get(row)?.under !== undefined,
    low: terms.low,
    days: heldDays(hold, terms.arrived),
    from,
    again: next?.from ?? null,
    withinError: level > card.band.low - errorAt(card, level),
  };
}

/** The level crosses the limit: one reading just over it, the next just under it. */
function isCrossing({ readings, terms, card }: Treatment, { hold }: CountedHold): boolean {
  if (hold.endedBy.kind !== 'below' || hold.to > hold.from) return false;
  const over = readings.low[hold.firstIndex] ?? NaN;
  const under = readings.low[hold.endedBy.index] ?? NaN;
  const within = (level: number): boolean => Math.abs(level - terms.low) <= errorAt(card, level) + levelTolerance;
  return within(over) && within(under);
}

function errorAt(card: Treatment['card'], level: number): number {
  return meterAccuracyOf(card) + card.meterPercent * level;
}
