import { type CopperMgPerLitre, type Fraction, type CopperPerRootDay, copperPerRootDay } from '../units/quantity.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { quantityReader } from '../units/readers/quantityReaders.js';

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

/** A meter, and how far the level it is used on wanders in a day; drift left out is the usual one. */
export interface MeterOnTank extends Meter {
  readonly drift?: CopperPerRootDay;
}

/**
 * A meter that can be reckoned with.
 *
 * Definition: accuracy or percent is above 0; a meter that claims no error at all leaves no chance to tell.
 *
 * @param given accuracy [mg/L], percent [1], drift [mg/L per √day]
 * @returns the same, or the problem
 */
export function meterOf(given: MeterOnTank): Result<MeterOnTank, Problem> {
  return given.accuracy > 0 || given.percent > 0 ? ok(given) : refuse({ code: 'meter-without-error' });
}

/** How much a level wanders in a day, written as a level; 0 is a level that stays. */
export const driftIn = quantityReader('level', { min: 0, max: 20 }, copperPerRootDay);
