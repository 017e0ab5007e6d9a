import { copperForms, formNames, type FormName } from '../dose/forms.js';
import { pacePlan } from '../dose/pacePlan.js';
import * as limits from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import { hoursPerDay, levelTolerance, secondDays } from '../units/quantity.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { nearLevelText, rounded, cardinal, ordinal } from './phrases.js';

interface WrongForm {
  readonly code: 'wrong-form';
  readonly side: 'above' | 'below';
  readonly levels: readonly number[];
  /** Three times the top, or a third of the low. */
  readonly limit: number;
  readonly fits: FormName | null;
}

const inARow = limits.wrongFormReadings.value;
const timesTop = limits.wrongFormOver.value;
const partOfLow = limits.wrongFormUnder.value;
/** So long after the last dose a raise is over. [days] */
const afterDoses = limits.raiseOver.value / hoursPerDay;

/**
 * Three readings in a row that belong to another form or band: over three times the top, or under a third of the low.
 *
 * Lows count once the raise should be over: a day and a half after a dose; or where the level has not risen over as
 * long, from a day past the card's pace after the first dose on, in a log without doses at once. Lows after the last
 * reading in the band are those of copper being taken out.
 *
 * Definition: the third reading of the first such row.
 */
export const wrongForm: Rule<WrongForm> = {
  about: `${cardinal(limits.wrongFormReadings.value)} readings in a row that belong to another form or band`,
  codes: { 'wrong-form': ['danger'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [],
  find,
  words,
  examples: [
    {
      log: daily('Cu', 2.25, 2.2, 2.3),
      card: 'volume|200 L\nform|sulfate',
      finds: ['danger 4 wrong-form'],
    },
    { log: daily('Cu', 2.25, 2.2, 2.3), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<WrongForm>[] {
  const { readings, card } = treatment;
  const high = timesTop * card.band.high + levelTolerance;
  const low = partOfLow * card.band.low - levelTolerance;
  const until = lastNotBelow(treatment);
  const raised = raisedAt(treatment);
  let above = 0;
  let below = 0;
  for (let index = 0; index < readings.count; index++) {
    const level = readings.low[index] ?? NaN;
    above = level > high ? above + 1 : 0;
    const counts =
      level < low && level > limits.wrongFormTrace.value * low && raised(index) && (until < 0 || index < until);
    below = counts ? below + 1 : 0;
    if (above === inARow) return [finding(treatment, index, { side: 'above', limit: timesTop * card.band.high })];
    if (below === inARow) return [finding(treatment, index, { side: 'below', limit: partOfLow * card.band.low })];
  }
  return [];
}

function words({ side, levels, limit, fits }: WrongForm): FindingWords {
  const far =
    side === 'above'
      ? `over ${cardinal(limits.wrongFormOver.value)} times the top`
      : `under a ${ordinal(Math.round(1 / limits.wrongFormUnder.value))} of the low`;
  return {
    finding:
      `${levels.map((each) => rounded(each, 3)).join(', ')} mg/L in a row are ${far} (${nearLevelText(limit)}): ` +
      `${fits === null ? 'the form, the band or the unit is not the one on the card' : formWords(fits)}.`,
    why: 'Bands belong to a chemical form; a test for free copper reads complexed copper low.',
  };
}

function formWords(fits: FormName): string {
  const { low, high } = copperForms[fits].band;
  return `they fit ${fits} copper (${rounded(low)} to ${rounded(high)}); check the product, the card and what the test reads`;
}

function lastNotBelow({ readings, card }: Treatment): number {
  let index = readings.count - 1;
  while (index >= 0 && (readings.low[index] ?? NaN) < card.band.low - levelTolerance) index--;
  return index;
}

/** Whether a raise should be over at a reading. */
function raisedAt(treatment: Treatment): (reading: number) => boolean {
  const { events, readings, card } = treatment;
  const doses: number[] = [];
  for (let index = 0; index < events.count; index++) {
    if (events.kind[index] === eventKinds.dose) doses.push(events.when[index] ?? NaN);
  }
  const first = doses[0];
  if (first === undefined) return (reading) => isLevelSince(treatment, reading);
  const planned = first + pacePlan(card.pace).days + 1;
  let next = 0;
  return (reading) => {
    const when = readings.when[reading] ?? NaN;
    while ((doses[next] ?? Infinity) < when) next++;
    const since = when - (doses[next - 1] ?? NaN);
    return since > afterDoses - secondDays || (when > planned && isLevelSince(treatment, reading));
  };
}

/** Without doses in the log: the level has not risen by a quarter in a day and a half. */
function isLevelSince({ readings }: Treatment, reading: number): boolean {
  const when = readings.when[reading] ?? NaN;
  let from = reading;
  while (from >= 0 && when - (readings.when[from] ?? NaN) < afterDoses - secondDays) from--;
  return from >= 0 && (readings.low[reading] ?? NaN) < limits.stillRising.value * (readings.low[from] ?? NaN);
}

function finding(
  { readings, card }: Treatment,
  third: number,
  body: { readonly side: 'above' | 'below'; readonly limit: number },
): Found<WrongForm> {
  const levels = Array.from({ length: inARow }, (_, back) => readings.low[third - inARow + 1 + back] ?? NaN);
  const at = { when: readings.when[third] ?? NaN, row: readings.row[third] ?? 0 };
  return {
    severity: 'danger',
    ...at,
    source: 'Practice',
    code: 'wrong-form',
    ...body,
    levels,
    fits: formFor(levels, card.form),
  };
}

/** The form whose band lies about these levels, within a fifth. */
function formFor(levels: readonly number[], own: FormName | null): FormName | null {
  const inBand = (name: FormName): boolean => {
    const { low, high } = copperForms[name].band;
    return levels.every(
      (level) => level > (1 - limits.formFits.value) * low && level < (1 + limits.formFits.value) * high,
    );
  };
  return formNames.find((name) => name !== own && inBand(name)) ?? null;
}
