import { ionicStrength, type IonicStrength, type PracticalSalinity } from '../units/quantity.js';

/**
 * Formal molal ionic strength of sea water.
 *
 * I = 19.9273·S ÷ (1000 − 1.005109·S)
 *
 * Basis: ion pairing not deducted; S in g/kg.
 * Validity: S 5–35, that of the dissociation constants that use it.
 * Differs from the source: nothing.
 * Source: [EPA1989, ionic strength from salinity].
 *
 * @param salinity [g/kg]
 * @returns ionic strength [mol/kg]
 * @example ionicStrengthOfSeawater(practicalSalinity(34)) // ≈ 0.7015
 */
export function ionicStrengthOfSeawater(salinity: PracticalSalinity): IonicStrength {
  return ionicStrength((19.9273 * salinity) / (1000 - 1.005109 * salinity));
}
