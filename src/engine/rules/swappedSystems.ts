import { copperForms, formNames, type FormName } from '../dose/forms.js';
import { limits } from '../limits/limits.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';
import { dosedBeforeNextTest } from './steady/dosedBeforeNextTest.js';
import { steadyLevels } from './steady/steadyLevels.js';
import { fates } from './steady/steadyPass.js';
import type { Treatment } from './treatment.js';

/**
 * A reading that belongs to another system. A danger once something was dosed on it.
 *
 * Basis: one system's log cannot show more. Which system a stray number was meant for, and two systems of one form at
 *   one level changed over, are seen only where both logs lie side by side.
 * Definition: a stray reading that no slip of the pen explains and that lies in the band of another form than the
 * card's.
 */
export const swappedSystems: Rule = (treatment, named) => {
  const steady = steadyLevels(treatment);
  if (steady === null || steady.allFit) return [];
  const { events } = treatment;
  const found: Finding[] = [];
  for (let index = 0; index < events.count; index++) {
    const fate = steady.fate[index];
    const row = events.row[index] ?? 0;
    if ((fate !== fates.stray && fate !== fates.last) || named.has(row)) continue;
    const written = events.amount[index] ?? NaN;
    const fits = otherForm(treatment, written, steady.spread[index] ?? NaN);
    if (fits === null) continue;
    const dosed = dosedBeforeNextTest(events, index);
    const at = { when: events.when[index] ?? NaN, row, source: 'Practice' } as const;
    const expected = steady.predicted[index] ?? NaN;
    const severity = dosed ? 'danger' : 'warning';
    found.push({ ...at, severity, code: 'swapped-systems', written, expected, fits, dosed });
  }
  return found;
};

/** A form whose band holds the level and lies apart from the card's. */
function otherForm({ card }: Treatment, written: number, spread: number): FormName | null {
  const beside = limits.otherBand.value * spread;
  const form = formNames.find((name) => {
    const { band } = copperForms[name];
    const apart = band.high < card.band.low || band.low > card.band.high;
    return name !== card.form && apart && written >= band.low - beside && written <= band.high + beside;
  });
  return form ?? null;
}
