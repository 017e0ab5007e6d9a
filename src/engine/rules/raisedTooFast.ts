import { pacePlan } from '../dose/pacePlan.js';
import { limits } from '../limits/limits.js';
import { anyTextFits } from '../log/table/anyTextFits.js';
import { eventKinds } from '../log/waterEvents.js';
import { hoursPerDay, levelTolerance, secondDays } from '../units/quantity.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';
import type { Treatment } from './treatment.js';

const shortestDays = limits.raiseHours.value / hoursPerDay;

const disease = /white ?spot|\bich\b|crypto(?:caryon)?\b|velvet|amyloodinium|trichodina/i;
const noDisease = /\b(?:no|without|free of|not)\b/i;

/**
 * Raised too fast: from under a tenth of the low limit into the band in under 24 h, or by one dose of more than a quarter
 * of the aim (half when urgent). Not where the pace is urgent or white spot, velvet or Trichodina is noted: then the
 * delay is the greater risk.
 */
export const raisedTooFast: Rule = (treatment, named) => {
  const urgent = isUrgent(treatment);
  return [...(urgent ? [] : fastRaises(treatment, named)), ...largeDoses(treatment, named, urgent)];
};

function isUrgent({ card, log }: Treatment): boolean {
  if (pacePlan(card.pace).roundTheClock || card.disease !== '') return true;
  const isDisease = (text: string): boolean => disease.test(text) && !noDisease.test(text);
  return anyTextFits(log.texts.note, isDisease) || anyTextFits(log.texts.signs, isDisease);
}

function fastRaises(treatment: Treatment, named: ReadonlySet<number>): readonly Finding[] {
  const { readings, terms } = treatment;
  const { count, when, low, row } = readings;
  const found: Finding[] = [];
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

/** The raise begins with the first dose after the low reading; a log without doses tells no better than the reading. */
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

function largeDoses({ events, card }: Treatment, named: ReadonlySet<number>, urgent: boolean): readonly Finding[] {
  const { strength, aim } = card;
  if (strength === null) return [];
  const share = urgent ? pacePlan('urgent').mostPerDose : pacePlan(card.pace).mostPerDose;
  const found: Finding[] = [];
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
