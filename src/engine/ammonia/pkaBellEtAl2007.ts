import { ammoniumPka, type AmmoniumPka } from '../units/quantity.js';
import type { SaltWater } from './unionisedFraction.js';

/**
 * pKa of ammonium in sea water, linear in temperature and salinity: a rival, for comparison.
 *
 * pKa = 10.0423 − 0.0315536·t + 0.003071·S
 *
 * Basis: t in °C.
 * Validity: t 5–25 °C, S 5–40, that of the measurements behind it.
 * Differs from the source: its corrected coefficients of 2008.
 * Source: [BellEtAl2007].
 *
 * @param water.temperature [°C]
 * @param water.salinity [g/kg]
 * @returns pKa [1]
 * @example pkaBellEtAl2007({ temperature: celsius(25), salinity: practicalSalinity(34) }) // ≈ 9.3579
 */
export function pkaBellEtAl2007({ temperature, salinity }: SaltWater): AmmoniumPka {
  return ammoniumPka(10.0423 - 0.0315536 * temperature + 0.003071 * salinity);
}
