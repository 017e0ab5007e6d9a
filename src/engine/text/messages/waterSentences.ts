import { shownNumber } from '../../units/shown.js';
import type { Sentences } from './sentences.js';

/** Water, strength and dose. */
export const waterSentences = {
  'no-water-left': ({ litres }) =>
    `sand depth and displaced leave ${shownNumber(litres)} L of water; write inside measures, and less sand or displaced`,
  'more-than': ({ field, given, limitField, limit, unit }) =>
    `${field} ${given} is more than ${limitField} ${limit}${after(unit)}; write at most ${limit}`,
  'not-below': ({ field, given, limitField, limit, unit }) =>
    `${field} ${given} is not below ${limitField} ${limit}${after(unit)}; write less than ${limit}`,
  'rise-too-small': ({ rise, needed }) =>
    `before and after differ by ${shownNumber(rise)} mg/L, too small to measure; ` +
    `give a bigger dose or use a better test, for a rise of at least ${shownNumber(needed)}`,
  'strength-unlikely': ({ strength }) =>
    `dose, treats and raises make ${shownNumber(strength)} mg/mL, outside 0.2–100; check mL, litres or gallons`,
  'lowering-by-dose': ({ wanted, level }) =>
    `wanted ${shownNumber(wanted)} is below the level ${shownNumber(level)}; ` +
    'lowering takes a water change, see QT.CHANGETOLOWER',
  'above-band': ({ wanted, band, low, high }) =>
    `wanted ${shownNumber(wanted)} is above the ${band} band, ${shownNumber(low)}–${shownNumber(high)}; ` +
    `write at most ${shownNumber(high)}`,
  'raising-by-change': ({ wanted, level }) =>
    `wanted ${shownNumber(wanted)} is above the level ${shownNumber(level)}; raising takes a dose, see QT.DOSE`,
  'not-above-replacement': ({ wanted, replacement }) =>
    `wanted ${shownNumber(wanted)} is not above the replacement level ${shownNumber(replacement)}; ` +
    'write a higher one, or change with water of a lower level',
  'dose-step-zero': ({ total, doses, smallest }) =>
    `${shownNumber(total)} mL in ${doses} doses makes steps of 0 at smallest ${shownNumber(smallest)} mL; ` +
    'give fewer doses or a thinner solution, see QT.THIN',
  'doses-past-a-day': ({ doses, hoursBetween }) =>
    `doses a day ${doses}, hours between ${shownNumber(hoursBetween)}: they do not fit in 24 h; ` +
    'write fewer doses or fewer hours',
  'not-one-level': ({ row, given }) =>
    `row ${row}: ${given} is not one level above 0, and the loss needs one; write the level, or "none" if untested`,
  'rise-not-below-reading': ({ row, rise, level }) =>
    `row ${row}: rise ${shownNumber(rise)} is not below the reading ${shownNumber(level)} mg/L; ` +
    'write the mg/L added since the reading before',
  'rise-without-time': ({ row, given }) =>
    `row ${row}: the rise ${given} has no time; write its date and time, like "2026-03-01 08:00"`,
  'readings-too-close': ({ hours }) =>
    `the readings span ${shownNumber(Number(hours.toPrecision(2)))} h, too short to show a daily loss; test again a day later`,
} satisfies Partial<Sentences>;

function after(unit: string): string {
  return unit === '' ? '' : ` ${unit}`;
}
