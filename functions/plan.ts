import {
  argumentsIn,
  days as wholeDays,
  daysIn,
  formIn,
  levelIn,
  medicinesIn,
  observationEnd,
  ok,
  paceIn,
  plan,
  planTable,
  readSigns,
  signsTable,
  signSteps,
  timeIn,
  unlessBlankOrZero,
  usualHoldDays,
} from '../src/engine/index.js';
import { pairAnswer, refusal, tableAnswer } from './answer.js';
import { cellOf } from './cellOf.js';
import { rangeOf } from './rangeOf.js';

/**
 * What signs in fish under copper call for: test first, lower and wait, raise slowly, stop copper. A veterinarian decides.
 * @customfunction SIGNS
 * @param when Times: one column, or date and time of day in two.
 * @param signs What was seen, in the same rows, like "not eating" or "eating again".
 * @returns Table with headings: When, Seen, Step.
 */
export function signsCell(when: any[][], signs: any[][]): any[][] {
  const texts = readSigns({ when: rangeOf(when), signs: rangeOf(signs), cellOf });
  if (!texts.ok) return refusal(texts);
  return tableAnswer(ok(signsTable(signSteps(texts.value))));
}

/**
 * A copper quarantine day by day, from screening the fish to the end of observation, each step with its source. A veterinarian decides.
 * @customfunction PLAN
 * @param start Date and time of the first dose.
 * @param form "sulfate", "amine" or "chelated".
 * @param [days] Days of the hold. [days] If omitted, 30.
 * @param [pace] "gradual", "sensitive", "urgent", or a number of days. [days] If omitted, "gradual": 4 days.
 * @param [otherMedicines] Other medicines by generic name, a cell or a range. If omitted, none.
 * @returns Table with headings: When, Day, Do, Why.
 */
export function planCell(start: any, form: any, days?: any, pace?: any, otherMedicines?: any[][]): any[][] {
  const medicines = rangeOf(otherMedicines).flat().map(cellOf);
  const asked = argumentsIn({
    start: timeIn(cellOf(start)),
    form: formIn(cellOf(form)),
    days: unlessBlankOrZero(cellOf(days), daysIn, wholeDays(usualHoldDays)),
    pace: unlessBlankOrZero(cellOf(pace), paceIn, 'gradual' as const),
    medicines: () => medicinesIn(medicines)('other medicines'),
  });
  if (!asked.ok) return refusal(asked);
  return tableAnswer(ok(planTable(plan(asked.value))));
}

/**
 * Earliest and advised end of observation after a treatment, side by side. Format both cells as dates.
 * @customfunction OBSERVEUNTIL
 * @param ended When the copper, or the last other treatment, was out.
 * @param [level] Median level of the hold. [mg/L] If omitted, not low.
 * @param [form] "sulfate", "amine" or "chelated". If omitted, "chelated".
 * @returns Earliest and advised end.
 */
export function observeUntilCell(ended: any, level?: any, form?: any): number[][] {
  const asked = argumentsIn({
    ended: timeIn(cellOf(ended)),
    level: unlessBlankOrZero(cellOf(level), levelIn, undefined),
    form: unlessBlankOrZero(cellOf(form), formIn, 'chelated' as const),
  });
  if (!asked.ok) return refusal(asked);
  const { earliest, advised } = observationEnd(asked.value);
  return pairAnswer(ok([earliest, advised]));
}
