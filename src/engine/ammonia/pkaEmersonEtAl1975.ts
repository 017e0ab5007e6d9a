import { ammoniumPka, type AmmoniumPka } from '../units/quantity.js';
import type { SaltWater } from './unionisedFraction.js';

/**
 * pKa of ammonium in fresh water: a rival, for comparison only.
 *
 * pKa = 0.09018 + 2729.92 ÷ T
 *
 * Basis: T in kelvin; no salt.
 * Validity: fresh water; used on sea water it overstates NH3 by about 25 %.
 * Differs from the source: nothing.
 * Source: [EmersonEtAl1975].
 *
 * @param water.temperature [°C]
 * @returns pKa [1]
 * @example pkaEmersonEtAl1975({ temperature: celsius(25) }) // ≈ 9.2464
 */
export function pkaEmersonEtAl1975({ temperature }: Pick<SaltWater, 'temperature'>): AmmoniumPka {
  return ammoniumPka(0.09018 + 2729.92 / (temperature + 273.15));
}
