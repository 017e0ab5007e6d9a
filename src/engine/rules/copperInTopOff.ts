import { limits } from '../limits/limits.js';
import { anyTextFits } from '../log/table/anyTextFits.js';
import { eventKinds } from '../log/waterEvents.js';
import { levelTolerance } from '../units/quantity.js';
import type { Finding } from './finding.js';
import { isDenied } from './isDenied.js';
import type { Rule } from './rule.js';
import { steadyLevels } from './steady/steadyLevels.js';
import { topOffCopper } from './steady/topOffCopper.js';
import type { Treatment } from './treatment.js';

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
export const copperInTopOff: Rule = (treatment, named) => {
  const noted = notedRow(treatment, named);
  return noted === null ? risenLevel(treatment, named) : [noted];
};

function notedRow({ log }: Treatment, named: ReadonlySet<number>): Finding | null {
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

function risenLevel(treatment: Treatment, named: ReadonlySet<number>): readonly Finding[] {
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
