import { fraction, type Fraction } from '../units/quantity.js';
import { atomicMasses, type SaltName, molarMass } from './molarMass.js';

/**
 * Share of a salt's mass that is copper.
 *
 * f = Cu ÷ M
 *
 * Basis: mass of copper as the element in mass of salt.
 * Validity: the pure salt; technical grades hold less.
 * Differs from the source: nothing; across published sets of masses the pentahydrate spans 0.25450–0.25451.
 * Source: [IUPAC1997, Cu]; molar mass [CIAAW, abridged].
 *
 * @param salt name of the salt
 * @returns copper fraction [1]
 * @example copperFraction('pentahydrate') // ≈ 0.254513
 */
export function copperFraction(salt: SaltName): Fraction {
  return fraction(atomicMasses.Cu / molarMass(salt));
}
