import { ionicStrengthOfSeawater } from '../seawater/ionicStrengthOfSeawater.js';
import { ammoniumPka, type AmmoniumPka } from '../units/quantity.js';
import type { SaltWater } from './unionisedFraction.js';

/**
 * pKa of ammonium in sea water as the US criteria for ammonia have it: a rival, for comparison.
 *
 * pKa = 9.245 + 0.116·I + 0.0324·(298 − T) + 0.0415·P ÷ T, with P = 1 atm
 *
 * Basis: T in kelvin.
 * Validity: compared at 0–35 °C, S 30, pH 8.0, the cells of its table of total ammonia that were copied.
 * Differs from the source: nothing; about 6 % more NH3 than the table of Bower and Bidwell.
 * Source: [EPA1989].
 *
 * @param water.temperature [°C]
 * @param water.salinity [g/kg]
 * @returns pKa [1]
 * @example pkaEpa1989({ temperature: celsius(25), salinity: practicalSalinity(34) }) // ≈ 9.3217
 */
export function pkaEpa1989({ temperature, salinity }: SaltWater): AmmoniumPka {
  const kelvin = temperature + 273.15;
  return ammoniumPka(9.245 + 0.116 * ionicStrengthOfSeawater(salinity) + 0.0324 * (298 - kelvin) + 0.0415 / kelvin);
}
