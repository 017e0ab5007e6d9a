import { copperForms, formNames, type FormName } from '../dose/forms.js';
import { eventKinds } from '../log/waterEvents.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';
import { dosedBeforeNextTest } from './steady/dosedBeforeNextTest.js';
import { steadyLevels, type SteadyLevels } from './steady/steadyLevels.js';
import { fates } from './steady/steadyPass.js';
import type { Treatment } from './treatment.js';

/** So near to what was expected the readings of two rows lie once they are changed over. [standard deviations] */
const fitsWithin = 3.5;

/**
 * A reading that belongs to another row or to another system. A danger once something was dosed on it.
 *
 * Definition: two readings in a row of which the first lies outside the gate of `steadyPass` and each is what was
 * expected of the other; or one stray reading that no slip of the pen explains and that lies in the band of another
 * form than the card's.
 *
 * One system's log cannot show more: which system a stray number was meant for, and two systems of one form kept at one
 * level changed over, are seen only where both logs lie side by side.
 */
export const swappedSystems: Rule = (treatment, named) => {
  const steady = steadyLevels(treatment);
  if (steady === null || !steady.fate.some((fate) => fate > fates.fits)) return [];
  const { events } = treatment;
  const found: Finding[] = [];
  const taken = new Set<number>();
  for (let index = 0; index < events.count; index++) {
    const fate = steady.fate[index] ?? fates.none;
    const row = events.row[index] ?? 0;
    if (fate <= fates.fits || named.has(row) || taken.has(row)) continue;
    const at = { when: events.when[index] ?? NaN, row, source: 'Practice' } as const;
    const written = events.amount[index] ?? NaN;
    const expected = steady.predicted[index] ?? NaN;
    const dosed = dosedBeforeNextTest(events, index);
    const severity = dosed ? 'danger' : 'warning';
    const other = swappedWith(treatment, steady, index);
    if (other !== null) {
      taken.add(other.row);
      found.push({ ...at, severity, code: 'swapped-rows', written, expected, other, dosed });
      continue;
    }
    const fits = fate === fates.jump ? null : otherForm(treatment, written, steady.spread[index] ?? NaN);
    if (fits !== null) found.push({ ...at, severity, code: 'swapped-systems', written, expected, fits, dosed });
  }
  return found;
};

/** The next reading, where each of the two is what was expected of the other. */
function swappedWith(
  { events, levels }: Treatment,
  steady: SteadyLevels,
  index: number,
): { row: number; level: number } | null {
  let next = index + 1;
  while (next < events.count && events.kind[next] !== eventKinds.reading) next++;
  if (next >= events.count || levels === null) return null;
  const { share, added } = levels.path.steps;
  const mine = events.amount[index] ?? NaN;
  const level = events.amount[next] ?? NaN;
  const spread = steady.spread[index] ?? NaN;
  const expected = steady.predicted[index] ?? NaN;
  let then = expected;
  for (let at = index + 1; at <= next; at++) then = then * (share[at] ?? NaN) + (added[at] ?? NaN);
  const apart = Math.abs(then - expected) > 2 * fitsWithin * spread;
  const fit = Math.abs(level - expected) < fitsWithin * spread && Math.abs(mine - then) < 1.5 * fitsWithin * spread;
  return apart && fit ? { row: events.row[next] ?? 0, level } : null;
}

/** A form whose band holds the level and lies apart from the card's. */
function otherForm({ card }: Treatment, written: number, spread: number): FormName | null {
  const form = formNames.find((name) => {
    const { band } = copperForms[name];
    const apart = band.high < card.band.low || band.low > card.band.high;
    return name !== card.form && apart && written >= band.low - 2 * spread && written <= band.high + 2 * spread;
  });
  return form ?? null;
}
