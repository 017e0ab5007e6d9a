import {
  copperMgPerLitre,
  type CopperMgPerLitre,
  type CopperMgPerMl,
  type Litres,
  type Millilitres,
} from '../units/quantity.js';

interface Addition {
  readonly volume: Litres;
  readonly added: Millilitres;
  readonly strength: CopperMgPerMl;
}

/**
 * Rise of the level that a dose gives.
 *
 * ΔC = added·strength ÷ V
 *
 * Basis: copper as the element; the dose's own volume is neglected.
 * Validity: any dose, mixed in.
 * Definition: the copper added, spread over the volume.
 *
 * @param addition.volume net volume of water [L]
 * @param addition.added dose [mL]
 * @param addition.strength strength of the solution [mg Cu/mL]
 * @returns rise [mg/L]
 * @example copperRise({ volume: litres(200), added: millilitres(10), strength: copperMgPerMl(10) }) // = 0.5
 */
export function copperRise({ volume, added, strength }: Addition): CopperMgPerLitre {
  return copperMgPerLitre((added * strength) / volume);
}
