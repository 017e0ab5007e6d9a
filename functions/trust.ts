import {
  accuracyIn,
  argumentsIn,
  bandIn,
  chanceIn,
  driftIn,
  fraction,
  holdChance,
  levelSettingIn,
  meterFit,
  meterFitsTable,
  meterOf,
  meterPercentIn,
  ok,
  unlessBlankOrZero,
  readingsAnswer,
  readingToKeep,
  usualAimChance,
} from '../src/engine/index.js';
import { numberAnswer, refusal, tableAnswer } from './answer.js';
import { cellOf } from './cellOf.js';
import { holdQuestion } from './holdQuestion.js';
import { rangeOf } from './rangeOf.js';

/**
 * Chance that the true level was never below the band in the running hold, given how good the meter is. It is no promise; a veterinarian decides.
 * @customfunction HOLDCHANCE
 * @param when Times of the tests: one column, or date and time of day in two.
 * @param copper Readings, in the same rows. [mg/L]
 * @param band A copper form, a low limit, or two cells low and high. [mg/L]
 * @param accuracy The meter's accuracy, plus or minus, for 95 of 100 readings. [mg/L]
 * @param [percent] Added to it, as a percent of the reading. [%] If omitted, 0.
 * @param [drift] How far the level drifts in a day. [mg/L] If omitted, 1 % of the low limit.
 * @returns Chance from 0 to 1.
 */
export function holdChanceCell(
  when: any[][],
  copper: any[][],
  band: any[][],
  accuracy: any,
  percent?: any,
  drift?: any,
): number {
  const settings = argumentsIn({
    accuracy: accuracyIn(cellOf(accuracy)),
    percent: unlessBlankOrZero(cellOf(percent), meterPercentIn, fraction(0)),
    drift: unlessBlankOrZero(cellOf(drift), driftIn, undefined),
  });
  if (!settings.ok) return refusal(settings);
  const meter = meterOf(settings.value);
  if (!meter.ok) return refusal(meter);
  const asked = holdQuestion({ when, copper, band, longestGap: 'none' });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(
    readingsAnswer(asked.value, (readings, { low }) => holdChance(readings, { low, ...meter.value })),
  );
}

/**
 * The reading to keep so that the true level is at or above the low limit with a given chance. A true level inside the band can harm too.
 * @customfunction AIM
 * @param band A copper form, a low limit, or two cells low and high. [mg/L]
 * @param accuracy The meter's accuracy, plus or minus, for 95 of 100 readings. [mg/L]
 * @param [percent] Added to it, as a percent of the reading. [%] If omitted, 0.
 * @param [chance] Chance wanted, from 50 %. [%] If omitted, 95.
 * @returns Reading to keep. [mg/L]
 */
export function aimCell(band: any[][], accuracy: any, percent?: any, chance?: any): number {
  const asked = argumentsIn({
    band: bandIn(rangeOf(band).map((row) => row.map(cellOf))),
    accuracy: accuracyIn(cellOf(accuracy)),
    percent: unlessBlankOrZero(cellOf(percent), meterPercentIn, fraction(0)),
    chance: unlessBlankOrZero(cellOf(chance), chanceIn, fraction(usualAimChance)),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(readingToKeep(asked.value));
}

/**
 * Whether a meter can show the low and the high limit of a band, and from which reading on it shows the low one.
 * @customfunction METERFITS
 * @param band A copper form, a low limit, or two cells low and high. [mg/L]
 * @param readsFrom Lowest level the meter can quantify. [mg/L]
 * @param readsTo Highest level the meter can read. [mg/L]
 * @param accuracy The meter's accuracy, plus or minus, for 95 of 100 readings. [mg/L]
 * @param [percent] Added to it, as a percent of the reading. [%] If omitted, 0.
 * @returns Table with headings: Can show the low, Can show the top, Keep at least, Why.
 */
export function meterFitsCell(band: any[][], readsFrom: any, readsTo: any, accuracy: any, percent?: any): any[][] {
  const asked = argumentsIn({
    band: bandIn(rangeOf(band).map((row) => row.map(cellOf))),
    readsFrom: levelSettingIn(cellOf(readsFrom)),
    readsTo: levelSettingIn(cellOf(readsTo)),
    accuracy: accuracyIn(cellOf(accuracy)),
    percent: unlessBlankOrZero(cellOf(percent), meterPercentIn, fraction(0)),
  });
  if (!asked.ok) return refusal(asked);
  const fit = meterFit(asked.value);
  if (!fit.ok) return refusal(fit);
  return tableAnswer(ok(meterFitsTable(fit.value)));
}
