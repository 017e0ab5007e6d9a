import * as limits from '../limits/limits.js';
import { anyTextFits } from '../log/table/anyTextFits.js';
import { eventKinds } from '../log/waterEvents.js';
import { levelTolerance } from '../units/quantity.js';
import { isDenied } from './isDenied.js';
import { steadyLevels } from './steady/steadyLevels.js';
import { topOffCopper } from './steady/topOffCopper.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { nearLevelText } from './phrases.js';
import { absorber } from './absorber.js';

interface CopperInTopOff {
  readonly code: 'copper-in-top-off';
  /** What a note says; null: the level shows it. */
  readonly words: string | null;
  readonly level: number | null;
}

const mentions = /\b(?:top(?:ped)?[- ]?(?:off|up)|topping[- ]?(?:off|up)|ato)\b/i;
const dosedTopOff =
  /\b(?:dosed|medicated|coppered|copper|cu|premixed|pre-mixed|treated)\s+(?:(?:water|mix)\s+)?(?:(?:in|into|to|for)\s+)?(?:the\s+)?(?:top[- ]?(?:off|up)|topping[- ]?(?:off|up)|ato)\b/i;
const topOffDosed =
  /\b(?:top(?:ped)?[- ]?(?:off|up)|topping[- ]?(?:off|up)|ato)\b(?:\s+(?!then|and|before|after|no|not|without|un\w*|rod?i?|fresh|pure|copper[- ]free)[\w.]+){0,5}\s+(?:copper(?![- ]free)(?:ed)?|cu|dosed|medicated|treated)\b/i;

/**
 * Copper in the top-off water: noted, or shown by a level that rises as water is topped off.
 *
 * Definition: the first row that says so, else the last top-off where `topOffCopper` lies above 0 by 3.5 standard
 * deviations and above three tenths of the aim, from the first reading in the band on.
 */
export const copperInTopOff: Rule<CopperInTopOff> = {
  about: 'copper in the top-off water: noted, or shown by a level that rises as water is topped off',
  codes: { 'copper-in-top-off': ['warning'] },
  sources: ['Practice'],
  needs: [['top-off', 'note']],
  yieldsTo: [...absorber.yieldsTo, absorber],
  find,
  words,
  examples: [
    { log: daily('Cu|note', 2.25, '2.25|copper in the top-off'), finds: ['warning 3 copper-in-top-off'] },
    { log: daily('Cu|note', 2.25, '2.25|topped off with fresh water, no copper'), finds: [] },
  ],
};

function find(treatment: Treatment, named: ReadonlySet<number>): readonly Found<CopperInTopOff>[] {
  const noted = notedRow(treatment, named);
  return noted === null ? risenLevel(treatment, named) : [noted];
}

function words({ words: noted, level }: CopperInTopOff): FindingWords {
  return {
    finding:
      noted === null
        ? `The level rises as water is topped off, as if that held about ${nearLevelText(level ?? 0)}: top off with water without copper.`
        : `"${noted}" is noted: top off with water without copper, mix half an hour, then test.`,
    why: 'Copper does not evaporate: copper in the top-off raises the level day by day.',
  };
}

function notedRow({ log }: Treatment, named: ReadonlySet<number>): Found<CopperInTopOff> | null {
  const notes = log.texts.note;
  if (notes === null || !anyTextFits(notes, (text) => mentions.test(text))) return null;
  for (let entry = 0; entry < log.count; entry++) {
    const text = notes[entry] ?? '';
    const row = log.row[entry] ?? 0;
    if (text === '' || named.has(row) || !mentions.test(text)) continue;
    const said = dosedTopOff.exec(text) ?? topOffDosed.exec(text);
    if (said === null || isDenied(text, { from: said.index, to: said.index + said[0].length })) continue;
    const words = said[0];
    const when = log.when[entry] ?? NaN;
    return { severity: 'warning', when, row, source: 'Practice', code: 'copper-in-top-off', words, level: null };
  }
  return null;
}

function risenLevel(treatment: Treatment, named: ReadonlySet<number>): readonly Found<CopperInTopOff>[] {
  const { events, card } = treatment;
  // Without doses in the log the level may rise by those that are not in it.
  if (treatment.log.numbers['top-off'] === null || !events.kind.includes(eventKinds.dose)) return [];
  const steady = steadyLevels(treatment);
  let first = 0;
  while (first < events.count && !isHeld(treatment, first)) first++;
  let topOffs = 0;
  let last = -1;
  for (let index = first; index < events.count; index++) {
    if (events.kind[index] !== eventKinds.topOff) continue;
    topOffs++;
    last = index;
  }
  if (steady === null || topOffs < limits.topOffs.value || named.has(events.row[last] ?? 0)) return [];
  const { level, spread } = topOffCopper(treatment, steady, first);
  if (!(level > limits.topOffSure.value * spread && level > limits.topOffPart.value * card.aim)) return [];
  const at = { when: events.when[last] ?? NaN, row: events.row[last] ?? 0, source: 'Practice' } as const;
  return [{ ...at, severity: 'warning', code: 'copper-in-top-off', words: null, level }];
}

function isHeld({ events, card }: Treatment, index: number): boolean {
  return events.kind[index] === eventKinds.reading && (events.amount[index] ?? NaN) >= card.band.low - levelTolerance;
}
