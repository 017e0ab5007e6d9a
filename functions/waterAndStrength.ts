import {
  accuracyIn,
  argumentsIn,
  centimetres,
  copperMgPerLitre,
  dosedVolumeIn,
  labelStrength,
  lengthIn,
  lengthOrNone,
  levelIn,
  levelSettingIn,
  litres,
  litresOrNone,
  netVolume,
  unlessBlankOrZero,
  readingLevel,
  strengthIn,
  volumeByDose,
  volumeIn,
} from '../src/engine/index.js';
import { numberAnswer, numberOrNothingAnswer, refusal } from './answer.js';
import { cellOf } from './cellOf.js';

/**
 * Litres of water in a box tank, from its inside measures, less sand and decor, plus sump and pipes.
 * @customfunction NETVOLUME
 * @param length Inside length. [cm]
 * @param width Inside width, front to back. [cm]
 * @param waterDepth From the bottom glass to the running water line. [cm]
 * @param [sandDepth] Depth of sand; it counts as 60 % solid. [cm] If omitted, 0.
 * @param [displaced] Water that rock and decor push out. [L] If omitted, 0.
 * @param [plus] Water in sump, filter and pipes. [L] If omitted, 0.
 * @returns Net volume. [L]
 */
export function netVolumeCell(
  length: any,
  width: any,
  waterDepth: any,
  sandDepth?: any,
  displaced?: any,
  plus?: any,
): number {
  const asked = argumentsIn({
    length: lengthIn(cellOf(length)),
    width: lengthIn(cellOf(width)),
    waterDepth: lengthIn(cellOf(waterDepth)),
    sandDepth: unlessBlankOrZero(cellOf(sandDepth), lengthOrNone, centimetres(0)),
    displaced: unlessBlankOrZero(cellOf(displaced), litresOrNone, litres(0)),
    plus: unlessBlankOrZero(cellOf(plus), litresOrNone, litres(0)),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(netVolume(asked.value));
}

/**
 * The real volume of a system, from a known dose and the rise in copper it gave once mixed. The dose's own volume is neglected.
 * @customfunction VOLUMEBYDOSE
 * @param added Dose added. [mL]
 * @param strength Strength of the solution. [mg Cu/mL]
 * @param before Copper read before the dose. [mg/L]
 * @param after Copper read after mixing. [mg/L]
 * @param [accuracy] Accuracy of the test, plus or minus. [mg/L] If omitted, 0.05.
 * @returns Volume. [L]
 */
export function volumeByDoseCell(added: any, strength: any, before: any, after: any, accuracy?: any): number {
  const asked = argumentsIn({
    added: dosedVolumeIn(cellOf(added)),
    strength: strengthIn(cellOf(strength)),
    before: levelIn(cellOf(before)),
    after: levelIn(cellOf(after)),
    accuracy: unlessBlankOrZero(cellOf(accuracy), accuracyIn, copperMgPerLitre(0.05)),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(volumeByDose(asked.value));
}

/**
 * Strength of a copper solution, from what its label says a dose does. A result outside 0.2 to 100 mg/mL means that a unit was mistaken.
 * @customfunction STRENGTH
 * @param dose Dose on the label. [mL]
 * @param treats Water that dose is for. [L]
 * @param raises Rise of copper it gives. [mg/L]
 * @returns Strength. [mg Cu/mL]
 */
export function strengthCell(dose: any, treats: any, raises: any): number {
  const asked = argumentsIn({
    dose: dosedVolumeIn(cellOf(dose)),
    treats: volumeIn(cellOf(treats)),
    raises: levelSettingIn(cellOf(raises)),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(labelStrength(asked.value));
}

/**
 * Any copper reading as a plain level, its low end: 2.05, "2,05 ppm", "2250 ug/L", "~2.1", "2.0-2.25", "1.05 x2". Blank stays blank.
 * @customfunction MGPERL
 * @param reading The copper cell. [mg/L]
 * @returns Copper. [mg/L]
 */
export function mgPerLCell(reading: any): any {
  return numberOrNothingAnswer(readingLevel(cellOf(reading), 'reading'));
}
