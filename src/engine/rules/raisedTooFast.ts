import { pacePlan } from '../dose/pacePlan.js';
import * as limits from '../limits/limits.js';
import { anyTextFits } from '../log/table/anyTextFits.js';
import { eventKinds } from '../log/waterEvents.js';
import { hoursPerDay, levelTolerance, secondDays } from '../units/quantity.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { levelText, millilitresText, ordinal } from './phrases.js';
import { aboveBand } from './aboveBand.js';
import { movedEarly } from './movedEarly.js';
import { newcomer } from './newcomer.js';
import { untestedStretches } from './untestedStretches.js';

type RaisedTooFast =
  | { readonly code: 'raised-too-fast'; readonly hours: number; readonly from: number; readonly level: number }
  | {
      readonly code: 'dose-too-large';
      readonly dose: number;
      readonly rise: number;
      readonly most: number;
      readonly urgent: boolean;
    };

const shortestDays = limits.raiseHours.value / hoursPerDay;

const disease = /white ?spot|\bich\b|crypto(?:caryon)?\b|velvet|amyloodinium|trichodina/i;
const noDisease = /\b(?:no|without|free of|not)\b/i;

/**
 * Raised too fast: from under a tenth of the low limit into the band in under 24 h, or by one dose of more than a quarter
 * of the aim (half when urgent). Not where the pace is urgent or white spot, velvet or Trichodina is noted: then the
 * delay is the greater risk.
 */
export const raisedTooFast: Rule<RaisedTooFast> = {
  about: 'a raise into the band in under a day, or a dose larger than one step',
  codes: { 'raised-too-fast': ['warning'], 'dose-too-large': ['warning'] },
  sources: ['Practice'],
  needs: [['copper', 'dose']],
  yieldsTo: [...aboveBand.yieldsTo, aboveBand, movedEarly, untestedStretches, newcomer],
  find,
  words,
  examples: [
    {
      log: 'When|Cu\n2026-03-01 08:00|0\n2026-03-01 20:00|2.25\n2026-03-02 20:00|2.25',
      finds: ['warning 3 raised-too-fast'],
    },
    { log: daily('Cu|dose', '1.1|12', '1.7|', '2.25|'), finds: ['warning 2 dose-too-large'] },
    { log: daily('Cu|dose', '0|11', '0.55|11', '1.1|11', '1.65|11', '2.2|'), finds: [] },
  ],
};

function find(treatment: Treatment, named: ReadonlySet<number>): readonly Found<RaisedTooFast>[] {
  const urgent = isUrgent(treatment);
  return [...(urgent ? [] : fastRaises(treatment, named)), ...largeDoses(treatment, named, urgent)];
}

function words(finding: RaisedTooFast): FindingWords {
  if (finding.code === 'raised-too-fast') {
    const { hours, from, level } = finding;
    return {
      finding: `Raised from ${levelText(from)} to ${levelText(level)} within ${hours.toFixed(1)} h: watch the fish, and raise over several days next time.`,
      why: 'Several small doses a day over several days; only with white spot or velvet showing is the delay the greater risk.',
    };
  }
  const { dose, rise, most, urgent } = finding;
  const parts = Math.round(1 / (urgent ? limits.urgentMostPerDose.value : limits.mostPerDose.value));
  const one = parts === 2 ? 'half' : `a ${ordinal(parts)}`;
  return {
    finding: `${millilitresText(dose, 1)} raise the level by ${levelText(rise)} at once, more than the ${millilitresText(most, 1)} of one step: split the dose.`,
    why: `One dose raises by at most ${one} of the aim${urgent ? ' when urgent' : ''}.`,
  };
}

function isUrgent({ card, log }: Treatment): boolean {
  if (pacePlan(card.pace).roundTheClock || card.disease !== '') return true;
  const isDisease = (text: string): boolean => disease.test(text) && !noDisease.test(text);
  return anyTextFits(log.texts.note, isDisease) || anyTextFits(log.texts.signs, isDisease);
}

function fastRaises(treatment: Treatment, named: ReadonlySet<number>): readonly Found<RaisedTooFast>[] {
  const { readings, terms } = treatment;
  const { count, when, low, row } = readings;
  const found: Found<RaisedTooFast>[] = [];
  let start = -1;
  for (let index = 0; index < count; index++) {
    const level = low[index] ?? NaN;
    if (level < terms.low * limits.raiseFrom.value && !named.has(row[index] ?? 0)) start = index;
    if (start < 0 || level < terms.low - levelTolerance) continue;
    const from = firstDoseFrom(treatment, when[start] ?? NaN);
    const days = (when[index] ?? NaN) - from;
    if (days >= 0 && days < shortestDays - secondDays && !named.has(row[index] ?? 0)) {
      found.push({
        code: 'raised-too-fast',
        severity: 'warning',
        when: when[index] ?? NaN,
        row: row[index] ?? 0,
        source: 'Practice',
        hours: days * hoursPerDay,
        from: low[start] ?? NaN,
        level,
      });
    }
    start = -1;
  }
  return found;
}

/** The raise begins with the first dose after the low reading; a log without doses knows no more than the reading. */
function firstDoseFrom({ events }: Treatment, when: number): number {
  let first = 0;
  let after = events.count;
  while (first < after) {
    const middle = (first + after) >>> 1;
    if ((events.when[middle] ?? NaN) < when) first = middle + 1;
    else after = middle;
  }
  while (first < events.count && events.kind[first] !== eventKinds.dose) first++;
  return first < events.count ? (events.when[first] ?? NaN) : when;
}

function largeDoses(
  { events, card }: Treatment,
  named: ReadonlySet<number>,
  urgent: boolean,
): readonly Found<RaisedTooFast>[] {
  const { strength, aim } = card;
  if (strength === null) return [];
  const share = urgent ? pacePlan('urgent').mostPerDose : pacePlan(card.pace).mostPerDose;
  const found: Found<RaisedTooFast>[] = [];
  let volume: number = card.volume;
  for (let index = 0; index < events.count; index++) {
    if (events.kind[index] === eventKinds.volume) volume = events.amount[index] ?? NaN;
    if (events.kind[index] !== eventKinds.dose) continue;
    const dose = events.amount[index] ?? NaN;
    const most = (share * aim * volume) / strength;
    const row = events.row[index] ?? 0;
    if (dose <= most + limits.syringeStep.value || named.has(row)) continue;
    const rise = (dose * strength) / volume;
    const at = { when: events.when[index] ?? NaN, row, source: 'Practice' } as const;
    found.push({ ...at, code: 'dose-too-large', severity: 'warning', dose, rise, most, urgent });
  }
  return found;
}
