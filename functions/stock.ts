import {
  callWith,
  choiceIn,
  dosedVolumeIn,
  named,
  ok,
  optionally,
  saltMassIn,
  saltNames,
  stockGrams,
  stockStrength,
  strengthIn,
  surely,
  thinnedStock,
  thinTable,
  volumeIn,
} from '../src/engine/index.js';
import { numberAnswer, tableAnswer } from './answer.js';
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
  return numberAnswer(
    callWith(surely(stockStrength), {
      grams: saltMassIn(cellOf(grams)),
      volume: named('litres', volumeIn(cellOf(litres))),
      salt: saltIn(salt),
    }),
  );
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
  return numberAnswer(
    callWith(surely(stockGrams), {
      strength: strengthIn(cellOf(strength)),
      volume: named('litres', volumeIn(cellOf(litres))),
      salt: saltIn(salt),
    }),
  );
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
  const thinned = callWith(thinnedStock, {
    strength: strengthIn(cellOf(strength)),
    wanted: named('wanted strength', strengthIn(cellOf(wantedStrength))),
    volume: named('mL', dosedVolumeIn(cellOf(mL))),
  });
  return tableAnswer(thinned.ok ? ok(thinTable(thinned.value)) : thinned);
}

function saltIn(salt: any) {
  return optionally(cellOf(salt), (cell) => choiceIn(cell, saltNames), 'pentahydrate' as const);
}
