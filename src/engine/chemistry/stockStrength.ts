import { copperMgPerMl, type CopperMgPerMl, type Litres, type SaltGrams } from '../units/quantity.js';
import { copperInSalt } from './copperInSalt.js';
import type { SaltName } from './molarMass.js';

interface Stock {
  readonly grams: SaltGrams;
  readonly volume: Litres;
  readonly salt: SaltName;
}

/**
 * Strength of a stock solution made up from salt.
 *
 * s = m(Cu) ÷ (1000·V)
 *
 * Basis: copper as the element; made up to the volume, not added to it.
 * Validity: the pure salt, wholly dissolved.
 * Definition: the copper in the salt divided by the volume of the stock.
 *
 * @param stock.grams mass of salt [g]
 * @param stock.volume volume made up to [L]
 * @param stock.salt name of the salt
 * @returns strength [mg Cu/mL]
 * @example stockStrength({ grams: saltGrams(3), volume: litres(0.75), salt: 'pentahydrate' }) // ≈ 1.01805
 */
export function stockStrength({ grams, volume, salt }: Stock): CopperMgPerMl {
  return copperMgPerMl(copperInSalt(grams, salt) / (1000 * volume));
}
