import { saltGrams, type CopperMilligrams, type SaltGrams } from '../units/quantity.js';
import { copperFraction } from './copperFraction.js';
import type { SaltName } from './molarMass.js';

/**
 * Salt that holds a mass of copper.
 *
 * m = m(Cu) ÷ (1000·f)
 *
 * Basis: salt as weighed, copper as the element.
 * Validity: the pure salt.
 * Definition: the copper's mass divided by the salt's copper fraction.
 *
 * @param copper mass of copper [mg]
 * @param salt name of the salt
 * @returns mass of salt [g]
 * @example saltForCopper(copperMilligrams(20), 'pentahydrate') // ≈ 0.0785815
 */
export function saltForCopper(copper: CopperMilligrams, salt: SaltName): SaltGrams {
  return saltGrams(copper / (1000 * copperFraction(salt)));
}
