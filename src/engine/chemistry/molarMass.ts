import { gramsPerMole, type GramsPerMole } from '../units/quantity.js';

/** Atomic masses. [g/mol] */
export const atomicMasses = {
  Cu: 63.546, // [IUPAC1997, Cu], seen
  H: 1.008, // [CIAAW, H], from memory
  N: 14.007, // [CIAAW, N], from memory
  O: 15.999, // [CIAAW, O], from memory
  S: 32.06, // [CIAAW, S], from memory
} as const;

/** Copper sulfate, CuSO4·nH2O, by its waters of crystal. */
const copperSalts = {
  pentahydrate: { waters: 5 }, // [ICSC1416, name and formula], seen
  anhydrous: { waters: 0 }, // [Memory, formula without water]
} as const;

export type SaltName = keyof typeof copperSalts;

/** In the order in which a message lists them. */
export const saltNames = ['pentahydrate', 'anhydrous'] as const satisfies readonly SaltName[];

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
