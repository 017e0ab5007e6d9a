import { fraction, type AmmoniumPka, type Fraction, type PhNbs } from '../units/quantity.js';

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
