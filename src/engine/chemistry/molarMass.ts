import { gramsPerMole, type GramsPerMole } from '../units/quantity.js';
import { atomicMasses } from './atomicMasses.js';
import { copperSalts, type SaltName } from './copperSalts.js';

/**
 * Molar mass of a copper salt.
 *
 * M = Cu + S + 4·O + n·(2·H + O)   n waters of crystal
 *
 * Basis: standard atomic masses.
 * Validity: the salts of copperSalts.
 * Differs from the source: nothing.
 * Source: [IUPAC1997, Cu]; H, O and S [CIAAW, abridged].
 *
 * @param salt name of the salt
 * @returns molar mass [g/mol]
 * @example molarMass('pentahydrate') // ≈ 249.677
 */
export function molarMass(salt: SaltName): GramsPerMole {
  const { Cu, S, O, H } = atomicMasses;
  return gramsPerMole(Cu + S + 4 * O + copperSalts[salt].waters * (2 * H + O));
}
