import { copperMilligrams, type CopperMgPerLitre, type CopperMilligrams, type Litres } from '../units/quantity.js';

/**
 * Copper dissolved in a volume of water at a level.
 *
 * m(Cu) = V·C
 *
 * Basis: copper as the element.
 * Validity: any volume and level.
 * Definition: volume times level.
 *
 * @param volume net volume of water [L]
 * @param level copper level [mg/L]
 * @returns mass of copper [mg]
 * @example copperMass(litres(200), copperMgPerLitre(0.15)) // = 30
 */
export function copperMass(volume: Litres, level: CopperMgPerLitre): CopperMilligrams {
  return copperMilligrams(volume * level);
}
