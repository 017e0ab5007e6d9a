import { copperMilligrams, type CopperMilligrams, type SaltGrams } from '../units/quantity.js';
import { copperFraction } from './copperFraction.js';
import type { SaltName } from './molarMass.js';

/**
 * Copper in a mass of salt.
 *
 * m(Cu) = 1000·m·f
 *
 * Basis: salt as weighed, copper as the element.
 * Validity: the pure salt.
 * Definition: the salt's mass times its copper fraction.
 *
 * @param grams mass of salt [g]
 * @param salt name of the salt
 * @returns mass of copper [mg]
 * @example copperInSalt(saltGrams(1), 'pentahydrate') // ≈ 254.513
 */
export function copperInSalt(grams: SaltGrams, salt: SaltName): CopperMilligrams {
  return copperMilligrams(1000 * grams * copperFraction(salt));
}
