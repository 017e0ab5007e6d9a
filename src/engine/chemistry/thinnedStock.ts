import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { millilitres, type CopperMgPerMl, type Millilitres } from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';

interface Thinning {
  readonly strength: CopperMgPerMl;
  readonly wanted: CopperMgPerMl;
  readonly volume: Millilitres;
}

/** What to pour together. */
export interface ThinnedStock {
  readonly stock: Millilitres;
  readonly water: Millilitres;
}

/**
 * Stock and water for a weaker working solution.
 *
 * stock = V·wanted ÷ strength, water = V − stock
 *
 * Basis: copper as the element; volumes taken to add up.
 * Validity: wanted strength not above the stock's.
 * Definition: the copper in the stock is the copper in the working solution.
 *
 * @param thinning.strength strength of the stock [mg Cu/mL]
 * @param thinning.wanted strength of the working solution [mg Cu/mL]
 * @param thinning.volume volume of the working solution [mL]
 * @returns stock and water [mL]
 * @example thinnedStock({ strength: copperMgPerMl(10), wanted: copperMgPerMl(1), volume: millilitres(500) }).value.stock // = 50
 */
export function thinnedStock({ strength, wanted, volume }: Thinning): Result<ThinnedStock, Problem> {
  if (wanted > strength * (1 + relativeNoise)) {
    const given = shownNumber(wanted);
    const limit = shownNumber(strength);
    return refuse({ code: 'more-than', field: 'wanted strength', given, limitField: 'strength', limit, unit: 'mg/mL' });
  }
  const stock = Math.min(volume, (volume * wanted) / strength);
  return ok({ stock: millilitres(stock), water: millilitres(volume - stock) });
}

/** Equal strengths that came by different units differ by this much in binary. */
const relativeNoise = 1e-9;
