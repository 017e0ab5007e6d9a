import {
  millilitres,
  type CopperMgPerLitre,
  type CopperMgPerMl,
  type Litres,
  type Millilitres,
} from '../units/quantity.js';

interface ReplacementWater {
  readonly change: Litres;
  readonly level: CopperMgPerLitre;
  readonly strength: CopperMgPerMl;
}

/**
 * Copper solution that brings replacement water to the tank's level, so that a change leaves that level.
 *
 * dose = change·level ÷ strength
 *
 * Basis: copper as the element; the dose's own volume is neglected.
 * Validity: replacement water without copper.
 * Definition: the copper that the water taken out held, divided by the copper in each mL.
 *
 * @param water.change volume changed [L]
 * @param water.level level of the tank [mg/L]
 * @param water.strength strength of the solution [mg Cu/mL]
 * @returns dose for the replacement water [mL]
 * @example copperForChange({ change: litres(50), level: copperMgPerLitre(2.25), strength: copperMgPerMl(10) }) // = 11.25
 */
export function copperForChange({ change, level, strength }: ReplacementWater): Millilitres {
  return millilitres((change * level) / strength);
}
