import {
  argumentsIn,
  choiceIn,
  dosedVolumeIn,
  named,
  ok,
  unlessBlankOrZero,
  saltMassIn,
  saltNames,
  stockGrams,
  stockStrength,
  strengthIn,
  thinnedStock,
  thinTable,
  volumeIn,
} from '../src/engine/index.js';
import { numberAnswer, refusal, tableAnswer } from './answer.js';
import { cellOf } from './cellOf.js';

/**
 * Strength of a stock solution of copper sulfate, counted as the element copper. Wear gloves and goggles: the salt is a poison.
 * @customfunction STOCKSTRENGTH
 * @param grams Copper sulfate. [g]
 * @param litres Volume the stock is made up to. [L]
 * @param [salt] "pentahydrate" or "anhydrous". If omitted, "pentahydrate".
 * @returns Strength. [mg Cu/mL]
 */
export function stockStrengthCell(grams: any, litres: any, salt?: any): number {
  const asked = argumentsIn({
    grams: saltMassIn(cellOf(grams)),
    volume: named('litres', volumeIn(cellOf(litres))),
    salt: saltIn(salt),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(ok(stockStrength(asked.value)));
}

/**
 * Grams of copper sulfate for a stock solution of a wanted strength, counted as the element copper. Wear gloves and goggles.
 * @customfunction STOCKGRAMS
 * @param strength Strength wanted. [mg Cu/mL]
 * @param litres Volume the stock is made up to. [L]
 * @param [salt] "pentahydrate" or "anhydrous". If omitted, "pentahydrate".
 * @returns Copper sulfate. [g]
 */
export function stockGramsCell(strength: any, litres: any, salt?: any): number {
  const asked = argumentsIn({
    strength: strengthIn(cellOf(strength)),
    volume: named('litres', volumeIn(cellOf(litres))),
    salt: saltIn(salt),
  });
  if (!asked.ok) return refusal(asked);
  return numberAnswer(ok(stockGrams(asked.value)));
}

/**
 * Stock and water to pour together for a weaker working solution, so that small doses can be measured.
 * @customfunction THIN
 * @param strength Strength of the stock. [mg Cu/mL]
 * @param wantedStrength Strength of the working solution. [mg Cu/mL]
 * @param mL Volume of working solution to make. [mL]
 * @returns Table with headings: Stock mL, Water mL.
 */
export function thinCell(strength: any, wantedStrength: any, mL: any): any[][] {
  const asked = argumentsIn({
    strength: strengthIn(cellOf(strength)),
    wanted: named('wanted strength', strengthIn(cellOf(wantedStrength))),
    volume: named('mL', dosedVolumeIn(cellOf(mL))),
  });
  if (!asked.ok) return refusal(asked);
  const thinned = thinnedStock(asked.value);
  if (!thinned.ok) return refusal(thinned);
  return tableAnswer(ok(thinTable(thinned.value)));
}

function saltIn(salt: any) {
  return unlessBlankOrZero(cellOf(salt), (cell) => choiceIn(cell, saltNames), 'pentahydrate' as const);
}
