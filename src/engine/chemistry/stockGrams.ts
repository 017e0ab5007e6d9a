import { copperMilligrams, type CopperMgPerMl, type Litres, type SaltGrams } from '../units/quantity.js';
import type { SaltName } from './molarMass.js';
import { saltForCopper } from './saltForCopper.js';

interface WantedStock {
  readonly strength: CopperMgPerMl;
  readonly volume: Litres;
  readonly salt: SaltName;
}

/**
 * Salt for a stock solution.
 *
 * m = s·V ÷ f
 *
 * Basis: copper as the element; made up to the volume, not added to it.
 * Validity: the pure salt, wholly dissolved.
 * Definition: the inverse of stockStrength.
 *
 * @param stock.strength strength wanted [mg Cu/mL]
 * @param stock.volume volume made up to [L]
 * @param stock.salt name of the salt
 * @returns mass of salt [g]
 * @example stockGrams({ strength: copperMgPerMl(1), volume: litres(1), salt: 'pentahydrate' }) // ≈ 3.9291
 */
export function stockGrams({ strength, volume, salt }: WantedStock): SaltGrams {
  return saltForCopper(copperMilligrams(strength * 1000 * volume), salt);
}
