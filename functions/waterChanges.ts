import {
  argumentsIn,
  changeIn,
  changePercentIn,
  changesToClear,
  changeToLower,
  copperForChange,
  copperMgPerLitre,
  levelAfterChange,
  levelAfterEvaporation,
  levelIn,
  levelOr,
  named,
  ok,
  strengthIn,
  volumeIn,
} from '../src/engine/index.js';
import { numberAnswer, refusal } from './answer.js';
import { cellOf } from './cellOf.js';
import { unlessZero } from './unlessZero.js';

/**
 * Copper solution for the replacement water of a water change, so that the tank's level stays. Top-off water gets none.
 * @customfunction CHANGEDOSE
 * @param change Water changed, or "25%" of the volume. [L]
 * @param level Copper in the tank, as tested. [mg/L]
 * @param strength Strength of the solution. [mg Cu/mL]
 * @param [volume] Net volume of water. [L] If omitted, write the change in litres.
 * @returns Dose for the replacement water. [mL]
 */
export function changeDoseCell(change: any, level: any, strength: any, volume?: any): number {
  const asked = argumentsIn({
    change: changeIn(cellOf(change), cellOf(volume)),
    level: levelIn(cellOf(level)),
    strength: strengthIn(cellOf(strength)),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(unlessZero('level', level, ok(copperForChange(asked.value))));
}

/**
 * Copper level after a water change. A level that falls below the band breaks the hold.
 * @customfunction AFTERCHANGE
 * @param volume Net volume of water. [L]
 * @param level Copper before, as tested. [mg/L]
 * @param change Water changed, or "25%" of the volume. [L]
 * @param [replacementLevel] Copper in the replacement water. [mg/L] If omitted, 0.
 * @returns Copper after. [mg/L]
 */
export function afterChangeCell(volume: any, level: any, change: any, replacementLevel?: any): number {
  const asked = argumentsIn({
    volume: volumeIn(cellOf(volume)),
    level: levelIn(cellOf(level)),
    change: changeIn(cellOf(change), cellOf(volume)),
    replacement: replacementIn(replacementLevel),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(levelAfterChange(asked.value));
}

/**
 * Copper level after evaporation, before topping off: copper stays behind, so the level rises. Top off without copper, then test.
 * @customfunction AFTEREVAPORATION
 * @param fullVolume Net volume when full. [L]
 * @param level Copper when full, as tested. [mg/L]
 * @param lost Water evaporated. [L]
 * @returns Copper before topping off. [mg/L]
 */
export function afterEvaporationCell(fullVolume: any, level: any, lost: any): number {
  const asked = argumentsIn({
    full: named('full volume', volumeIn(cellOf(fullVolume))),
    level: levelIn(cellOf(level)),
    lost: volumeIn(cellOf(lost)),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(levelAfterEvaporation(asked.value));
}

/**
 * Water to change in one go to lower copper to a wanted level. Lowering below the band breaks the hold.
 * @customfunction CHANGETOLOWER
 * @param volume Net volume of water. [L]
 * @param level Copper now, as tested. [mg/L]
 * @param wanted Copper wanted. [mg/L]
 * @param [replacementLevel] Copper in the replacement water. [mg/L] If omitted, 0.
 * @returns Water to change. [L]
 */
export function changeToLowerCell(volume: any, level: any, wanted: any, replacementLevel?: any): number {
  const asked = argumentsIn({
    volume: volumeIn(cellOf(volume)),
    level: levelIn(cellOf(level)),
    wanted: levelIn(cellOf(wanted)),
    replacement: replacementIn(replacementLevel),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(changeToLower(asked.value));
}

/**
 * How many copper-free water changes bring copper down to a wanted level. Copper comes back off silicone and sand: test again later.
 * @customfunction CHANGESTOCLEAR
 * @param level Copper now, as tested. [mg/L]
 * @param wanted Copper wanted at the end. [mg/L]
 * @param percent Share of the water changed each time: 25, "25%" or 0.25. [%]
 * @returns Number of changes.
 */
export function changesToClearCell(level: any, wanted: any, percent: any): number {
  const asked = argumentsIn({
    level: levelIn(cellOf(level)),
    wanted: levelIn(cellOf(wanted)),
    share: named('percent', changePercentIn(cellOf(percent))),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(changesToClear(asked.value));
}

function replacementIn(cell: unknown) {
  return named('replacement level', levelOr(cellOf(cell), copperMgPerLitre(0)));
}
