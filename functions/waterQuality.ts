import {
  ammoniaBases,
  ammoniaChange,
  ammoniaChangeTable,
  ammoniaIn,
  ammoniaSettingIn,
  argumentsIn,
  celsius,
  choiceIn,
  freeAmmonia,
  levelIn,
  lossRate,
  lossRateTable,
  ok,
  unlessBlankOrZero,
  phIn,
  readLossReadings,
  salinityFromSpecificGravity,
  salinityIn,
  specificGravityIn,
  specificGravityOfSeawater,
  strengthIn,
  temperatureIn,
  totalAmmoniaIn,
  volumeIn,
} from '../src/engine/index.js';
import { numberAnswer, refusal, tableAnswer } from './answer.js';
import { cellOf } from './cellOf.js';
import { notZero, unlessZero } from './unlessZero.js';
import { rangeOf } from './rangeOf.js';

/**
 * Un-ionised ammonia in sea water from total ammonia, by Bower and Bidwell (1978). In copper-treated water liquid ammonia tests read falsely positive; an in-tank indicator still works.
 * @customfunction FREEAMMONIA
 * @param total Total ammonia, as tested. [mg/L]
 * @param pH From 7.5 to 8.5. [NBS]
 * @param temperature From 5 to 35. [°C]
 * @param salinity From 5 to 35. [g/kg]
 * @param [as] What the test counts total ammonia as, "N" or "NH3". If omitted, "NH3".
 * @returns Un-ionised ammonia, as NH3. [mg/L]
 */
export function freeAmmoniaCell(total: any, pH: any, temperature: any, salinity: any, as?: any): number {
  const asked = argumentsIn({
    total: totalAmmoniaIn(cellOf(total)),
    pH: phIn(cellOf(pH)),
    temperature: temperatureIn(cellOf(temperature)),
    salinity: salinityIn(cellOf(salinity)),
    as: unlessBlankOrZero(cellOf(as), (cell) => choiceIn(cell, ammoniaBases), 'NH3' as const),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(freeAmmonia(asked.value));
}

/**
 * The water change that dilutes ammonia, and the copper for the new water, so that the hold is not lost. The new water holds no ammonia.
 * @customfunction AMMONIACHANGE
 * @param volume Net volume of water. [L]
 * @param ammonia Ammonia now, as tested. [mg/L]
 * @param wanted Ammonia wanted after the change, above 0, counted the same way. [mg/L]
 * @param level Copper in the tank, as tested. [mg/L]
 * @param strength Strength of the copper solution. [mg Cu/mL]
 * @returns Table with headings: Change L, Copper mL for the new water.
 */
export function ammoniaChangeCell(volume: any, ammonia: any, wanted: any, level: any, strength: any): any[][] {
  const asked = argumentsIn({
    volume: volumeIn(cellOf(volume)),
    wanted: ammoniaSettingIn(cellOf(wanted)),
    level: levelIn(cellOf(level)),
    strength: strengthIn(cellOf(strength)),
    ammonia: notZero(ammonia, ammoniaIn),
  });
  if (!asked.ok) return refusal(asked);
  const change = unlessZero('level', level, ammoniaChange(asked.value));
  if (!change.ok) return refusal(change);
  return tableAnswer(ok(ammoniaChangeTable(change.value)));
}

/**
 * Salinity of sea water from its specific gravity, by the equation of state in Fofonoff and Millard (1983), 0 to 42 g/kg.
 * @customfunction SALINITY
 * @param specificGravity As read, such as 1.0264. [1]
 * @param temperature Of the sample, from 0 to 40. [°C]
 * @param [reference] Of the pure water the hydrometer compares with. [°C] If omitted, 25.
 * @returns Salinity. [g/kg]
 */
export function salinityCell(specificGravity: any, temperature: any, reference?: any): number {
  const asked = argumentsIn({
    specificGravity: specificGravityIn(cellOf(specificGravity)),
    temperature: temperatureIn(cellOf(temperature)),
    reference: unlessBlankOrZero(cellOf(reference), temperatureIn, celsius(25)),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(salinityFromSpecificGravity(asked.value));
}

/**
 * Specific gravity of sea water: its density over that of pure water, by the equation of state in Fofonoff and Millard (1983).
 * @customfunction SPECIFICGRAVITY
 * @param salinity From 0 to 42. [g/kg]
 * @param temperature Of the sample, from 0 to 40. [°C]
 * @param [reference] Of the pure water compared with. [°C] If omitted, 25.
 * @returns Specific gravity. [1]
 */
export function specificGravityCell(salinity: any, temperature: any, reference?: any): number {
  const asked = argumentsIn({
    salinity: salinityIn(cellOf(salinity)),
    temperature: temperatureIn(cellOf(temperature)),
    reference: unlessBlankOrZero(cellOf(reference), temperatureIn, celsius(25)),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(specificGravityOfSeawater(asked.value));
}

/**
 * Copper lost a day as a share of the level, with its 95 % interval. With nothing added it is the bench test of a rock or of filter media in a bucket of copper water.
 * @customfunction LOSSRATE
 * @param when Times of the tests: one column, or date and time of day in two.
 * @param copper Readings above 0, in the same rows. [mg/L]
 * @param [rise] Copper added since the reading before, in the same rows. [mg/L] If omitted, none was.
 * @returns Table with headings: % a day, Low, High, R², Verdict.
 */
export function lossRateCell(when: any[][], copper: any[][], rise?: any[][]): any[][] {
  const readings = readLossReadings({
    when: rangeOf(when),
    copper: rangeOf(copper),
    rise: rangeOf(cellOf(rise) === 0 ? null : rise),
    cellOf,
  });
  if (!readings.ok) return refusal(readings);
  const rate = lossRate(readings.value);
  if (!rate.ok) return refusal(rate);
  return tableAnswer(ok(lossRateTable(rate.value)));
}
