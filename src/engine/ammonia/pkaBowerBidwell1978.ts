import { ionicStrengthOfSeawater } from '../seawater/ionicStrengthOfSeawater.js';
import { ammoniumPka, type AmmoniumPka } from '../units/quantity.js';
import type { SaltWater } from './unionisedFraction.js';

/**
 * pKa of ammonium in sea water, the form behind the table of percentages that keepers use.
 *
 * pKa = 0.0901821 + 2729.92 ÷ (t + 273.2) + (0.1552 − 0.0003142·t)·I
 *
 * Basis: pH on the NBS scale; t in °C; I the formal molal ionic strength.
 * Validity: S 5–35, t 5–35 °C, pH 7.8–8.3 as stated; within 2 % of the printed table from pH 7.5 to 8.5, 10–25 °C, S 34.
 * Differs from the source: nothing.
 * Source: [BowerBidwell1978], [Whitfield1974]; the term in I is that of [KhooEtAl1977, abstract].
 *
 * @param water.temperature [°C]
 * @param water.salinity [g/kg]
 * @returns pKa [1]
 * @example pkaBowerBidwell1978({ temperature: celsius(25), salinity: practicalSalinity(34) }) // ≈ 9.348
 */
export function pkaBowerBidwell1978({ temperature, salinity }: SaltWater): AmmoniumPka {
  const pure = 0.0901821 + 2729.92 / (temperature + 273.2);
  return ammoniumPka(pure + (0.1552 - 0.0003142 * temperature) * ionicStrengthOfSeawater(salinity));
}
