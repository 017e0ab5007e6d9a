import { celsius68, type Celsius, type Celsius68 } from './quantity.js';

/**
 * A temperature of the scale in use since 1990 on the scale of 1968, on which the equation of state was fitted.
 *
 * t68 = 1.00024·t90
 *
 * Basis: both in °C.
 * Validity: −2 to 40 °C, that of the formulas it serves.
 * Differs from the source: nothing.
 * Source: [Memory, the conversion in use among oceanographers].
 *
 * @param temperature [°C ITS-90]
 * @returns [°C IPTS-68]
 * @example celsius68FromCelsius(celsius(25)) // ≈ 25.006
 */
export function celsius68FromCelsius(temperature: Celsius): Celsius68 {
  return celsius68(1.00024 * temperature);
}
