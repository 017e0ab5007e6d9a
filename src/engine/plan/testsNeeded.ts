import * as limits from '../limits/limits.js';

interface Course {
  readonly testsADayRaising: number;
  readonly raisingDays: number;
  readonly holdDays: number;
}

/**
 * Copper tests to have at hand for raising and holding.
 *
 * n = ⌈1.1·(raising·tests a day + hold)⌉, part days counted as whole ones
 *
 * Basis: one test a day, more while raising (a second, or one every 6 hours), and a tenth spare.
 * Validity: tests in one go, without repeats of a failed batch.
 * Differs from the source: nothing.
 * Source: [Practice, what to have at hand].
 *
 * @param course.raisingDays days of raising
 * @param course.testsADayRaising tests a day while raising
 * @param course.holdDays days of the hold
 * @returns number of tests
 * @example testsNeeded({ raisingDays: 4, testsADayRaising: 2, holdDays: 30 }) // = 42
 */
export function testsNeeded({ raisingDays, testsADayRaising, holdDays }: Course): number {
  const tests = testsADayRaising * Math.ceil(raisingDays) + Math.ceil(holdDays);
  // Rounded first: 1.1 × 30 is 33.000000000000004 in binary.
  return Math.ceil(Number((tests * (1 + limits.spareTests.value)).toFixed(9)));
}
