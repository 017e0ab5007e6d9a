import {
  kilogramsPerCubicMetre,
  type Celsius68,
  type KilogramsPerCubicMetre,
  type PracticalSalinity,
} from '../units/quantity.js';

/**
 * Density of sea water at one atmosphere; at salinity 0 that of pure water.
 *
 * ρ(S, t) = ρw(t) + A(t)·S + B(t)·S^1.5 + C·S², coefficients below, as printed.
 *
 * Basis: practical salinity; t on IPTS-68 (see celsius68FromCelsius); density of the atmosphere not deducted.
 * Validity: S 0–42, t −2–40 °C; the callers refuse what lies outside.
 * Differs from the source: nothing.
 * Source: [FofonoffMillard1983, p. 19, coefficients and check values], which prints the equation of [MilleroPoisson1981].
 *
 * @param salinity practical salinity [1]
 * @param temperature [°C IPTS-68]
 * @returns density [kg/m³]
 * @example densityMilleroPoisson1981(practicalSalinity(35), celsius68(5)) // ≈ 1027.67547
 */
export function densityMilleroPoisson1981(salinity: PracticalSalinity, temperature: Celsius68): KilogramsPerCubicMetre {
  const pure = polynomial(pureWater, temperature);
  const salt = polynomial(a, temperature) * salinity + polynomial(b, temperature) * salinity ** 1.5 + c * salinity ** 2;
  return kilogramsPerCubicMetre(pure + salt);
}

// Coefficients of rising powers of the temperature.
const pureWater = [999.842594, 6.793952e-2, -9.09529e-3, 1.001685e-4, -1.120083e-6, 6.536332e-9] as const;
const a = [0.824493, -4.0899e-3, 7.6438e-5, -8.2467e-7, 5.3875e-9] as const;
const b = [-5.72466e-3, 1.0227e-4, -1.6546e-6] as const;
const c = 4.8314e-4;

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}
