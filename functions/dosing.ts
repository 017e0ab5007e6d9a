import {
  argumentsIn,
  copperDose,
  copperRise,
  dosedVolumeIn,
  doseSplitTable,
  formIn,
  hoursIn,
  levelIn,
  millilitres,
  ok,
  paceIn,
  ramp,
  rampTable,
  splitDose,
  strengthIn,
  timeIn,
  unlessBlankOrZero,
  volumeIn,
  wholeNumberIn,
  type Cell,
} from '../src/engine/index.js';
import { numberAnswer, refusal, tableAnswer } from './answer.js';
import { cellOf } from './cellOf.js';
import { unlessZero } from './unlessZero.js';

/** The most doses and days a schedule may have. */
const dosesADayIn = (cell: Cell) => wholeNumberIn(cell, { min: 1, max: 96 });
const doseDaysIn = (cell: Cell) => wholeNumberIn(cell, { min: 1, max: 365 }, 'days');

/**
 * Copper solution that raises the tank from one level to another. Copper is a poison: test before the next dose.
 * @customfunction DOSE
 * @param volume Net volume of water. [L]
 * @param level Copper now, as tested. [mg/L]
 * @param wanted Copper wanted. [mg/L]
 * @param strength Strength of the solution. [mg Cu/mL]
 * @param [form] "sulfate", "amine" or "chelated": guards the top of its band. If omitted, 2.55 is the top.
 * @returns Dose. [mL]
 */
export function doseCell(volume: any, level: any, wanted: any, strength: any, form?: any): number {
  const asked = argumentsIn({
    volume: volumeIn(cellOf(volume)),
    level: levelIn(cellOf(level)),
    wanted: levelIn(cellOf(wanted)),
    strength: strengthIn(cellOf(strength)),
    form: unlessBlankOrZero(cellOf(form), formIn, undefined),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(unlessZero('level', level, copperDose(asked.value)));
}

/**
 * Rise of copper that a dose gives once it is mixed in.
 * @customfunction RISE
 * @param volume Net volume of water. [L]
 * @param added Dose added. [mL]
 * @param strength Strength of the solution. [mg Cu/mL]
 * @returns Rise. [mg/L]
 */
export function riseCell(volume: any, added: any, strength: any): number {
  const asked = argumentsIn({
    volume: volumeIn(cellOf(volume)),
    added: dosedVolumeIn(cellOf(added)),
    strength: strengthIn(cellOf(strength)),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(ok(copperRise(asked.value)));
}

/**
 * A dose split into small equal parts over a day or several, each a step the syringe can read. Test before each day's first dose.
 * @customfunction DOSESPLIT
 * @param total Dose in all. [mL]
 * @param dosesADay Parts a day.
 * @param [days] Days to spread it over. [days] If omitted, 1.
 * @param [firstDoseAt] Date and time of the first part. If omitted, hours are counted from it.
 * @param [hoursBetween] Hours between the parts of a day. [h] If omitted, a day's parts span 12 hours.
 * @param [smallest] Smallest step of the syringe. [mL] If omitted, 0.1.
 * @returns Table with headings: When (or Hours), Dose mL, Running mL.
 */
export function doseSplitCell(
  total: any,
  dosesADay: any,
  days?: any,
  firstDoseAt?: any,
  hoursBetween?: any,
  smallest?: any,
): any[][] {
  const first = unlessBlankOrZero(cellOf(firstDoseAt), timeIn, undefined)('first dose at');
  const asked = argumentsIn({
    total: dosedVolumeIn(cellOf(total)),
    dosesADay: dosesADayIn(cellOf(dosesADay)),
    days: unlessBlankOrZero(cellOf(days), doseDaysIn, 1),
    hoursBetween: unlessBlankOrZero(cellOf(hoursBetween), hoursIn, undefined),
    smallest: unlessBlankOrZero(cellOf(smallest), dosedVolumeIn, millilitres(0.1)),
  });
  if (!asked.ok) return refusal(asked);
  const split = splitDose(asked.value);
  if (!split.ok) return refusal(split);
  if (!first.ok) return refusal(first);
  return tableAnswer(ok(doseSplitTable(split.value, first.value)));
}

/**
 * Doses that raise copper slowly to the wanted level, when to give each, the level to expect after it, and when to test.
 * @customfunction RAMP
 * @param volume Net volume of water. [L]
 * @param level Copper now, as tested. [mg/L]
 * @param wanted Copper wanted. [mg/L]
 * @param strength Strength of the solution. [mg Cu/mL]
 * @param start Date and time of the first dose.
 * @param [pace] "gradual", "sensitive", "urgent", or a number of days. [days] If omitted, "gradual": 4 days.
 * @param [dosesADay] Doses a day. If omitted, 5; when urgent, 4.
 * @param [form] "sulfate", "amine" or "chelated": guards the top of its band. If omitted, 2.55 is the top.
 * @param [smallest] Smallest step of the syringe. [mL] If omitted, 0.1.
 * @returns Table with headings: When, Dose mL, Level after, Do.
 */
export function rampCell(
  volume: any,
  level: any,
  wanted: any,
  strength: any,
  start: any,
  pace?: any,
  dosesADay?: any,
  form?: any,
  smallest?: any,
): any[][] {
  const asked = argumentsIn({
    volume: volumeIn(cellOf(volume)),
    level: levelIn(cellOf(level)),
    wanted: levelIn(cellOf(wanted)),
    strength: strengthIn(cellOf(strength)),
    start: timeIn(cellOf(start)),
    pace: unlessBlankOrZero(cellOf(pace), paceIn, 'gradual' as const),
    dosesADay: unlessBlankOrZero(cellOf(dosesADay), dosesADayIn, undefined),
    form: unlessBlankOrZero(cellOf(form), formIn, undefined),
    smallest: unlessBlankOrZero(cellOf(smallest), dosedVolumeIn, millilitres(0.1)),
  });
  if (!asked.ok) return refusal(asked);
  const steps = ramp(asked.value);
  if (!steps.ok) return refusal(steps);
  return tableAnswer(ok(rampTable(steps.value)));
}
