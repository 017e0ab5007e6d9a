import {
  fraction,
  type AmmoniumPka,
  type Fraction,
  type PhNbs,
  type Celsius,
  type PracticalSalinity,
} from '../units/quantity.js';

export interface SaltWater {
  readonly temperature: Celsius;
  readonly salinity: PracticalSalinity;
}

/** A formula for the pKa of ammonium; its rivals have the same form, so that one can stand in for another. */
export type PkaOfAmmonium = (water: SaltWater) => AmmoniumPka;

/**
 * The part of total ammonia that is un-ionised, NH3, the poisonous form.
 *
 * f = 1 ÷ (1 + 10^(pKa − pH))
 *
 * Basis: pH on the NBS scale, like the pKa.
 * Definition: the dissociation equilibrium NH4+ = NH3 + H+.
 *
 * @param pH [NBS]
 * @param pKa of ammonium in this water [1]
 * @returns from 0 to 1
 * @example unionisedFraction(phNbs(8), ammoniumPka(9)) // ≈ 0.0909
 */
export function unionisedFraction(pH: PhNbs, pKa: AmmoniumPka): Fraction {
  return fraction(1 / (1 + 10 ** (pKa - pH)));
}
