import { copperForms, formNames, type FormName } from '../dose/forms.js';
import * as limits from '../limits/limits.js';
import { dosedBeforeNextTest } from './steady/nextReading.js';
import { steadyLevels } from './steady/steadyLevels.js';
import { fates } from './steady/steadyPass.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { nearLevelText } from './phrases.js';
import { swappedRows } from './swappedRows.js';
import { unitSlip } from './unitSlip.js';

interface SwappedSystems {
  readonly code: 'swapped-systems';
  readonly written: number;
  readonly expected: number;
  readonly fits: FormName;
  readonly dosed: boolean;
}

/**
 * A reading that belongs to another system. A danger once something was dosed on it.
 *
 * Basis: one system's log cannot show more. Which system a stray number was meant for, and two systems of one form at
 *   one level swapped, are seen only where both logs lie side by side.
 * Definition: a stray reading that no slip of the pen explains and that lies in the band of another form than the
 * card's.
 */
export const swappedSystems: Rule<SwappedSystems> = {
  about: 'a reading that belongs to another system',
  codes: { 'swapped-systems': ['danger', 'warning'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [swappedRows, unitSlip],
  find,
  words,
  examples: [
    { log: daily('Cu', 2.25, 2.25, 0.5, 2.25, 2.25), finds: ['warning 4 swapped-systems'] },
    { log: daily('Cu', 2.25, 2.25, 2.1, 2.25, 2.25), finds: [] },
  ],
};

function find(treatment: Treatment, named: ReadonlySet<number>): readonly Found<SwappedSystems>[] {
  const steady = steadyLevels(treatment);
  if (steady === null || steady.allFit) return [];
  const { events } = treatment;
  const found: Found<SwappedSystems>[] = [];
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
}

function words({ written, expected, fits, dosed }: SwappedSystems): FindingWords {
  return {
    finding:
      `${nearLevelText(written)} fits ${fits} copper and not this system, where about ${nearLevelText(expected)} is expected: look for ` +
      `the entry in another system's log${dosed ? '; copper was dosed on it, test now' : ''}.`,
    why: 'A reading that fits another band and not its neighbours was likely taken from another tank.',
  };
}

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
