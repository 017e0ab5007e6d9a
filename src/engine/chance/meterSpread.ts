import type { CopperMgPerLitre, Fraction } from '../units/quantity.js';

/** How good a meter is: of 95 % of readings the true level is within accuracy + percent of the reading. */
export interface Meter {
  readonly accuracy: CopperMgPerLitre;
  readonly percent: Fraction;
}

/** Standard deviations to either side that hold 95 % of a normal; from memory. */
export const spreadsAt95 = 1.96;

/**
 * Standard deviation of the true level about a reading.
 *
 * σ = (accuracy + percent·reading) ÷ 1.96
 *
 * Basis: accuracy and percent as a meter's sheet states them, at 95 %; errors normal.
 * Definition: 1.96 standard deviations to either side hold 95 % of a normal.
 *
 * @param meter its accuracy [mg/L] and its percent of the reading [1]
 * @param reading [mg/L]
 * @returns standard deviation [mg/L]
 * @example meterSpread({ accuracy: 0.098, percent: 0 }, 2) // ≈ 0.05
 */
export function meterSpread({ accuracy, percent }: Meter, reading: number): number {
  return (accuracy + percent * reading) / spreadsAt95;
}
