interface Course {
  readonly raisingDays: number;
  readonly holdDays: number;
}

/**
 * Copper tests to have at hand for raising and holding.
 *
 * n = ⌈1.1·(raising + hold + raising)⌉, part days counted as whole ones
 *
 * Basis: one test a day, a second while raising, and a tenth spare.
 * Validity: tests in one go, without repeats of a failed batch.
 * Differs from the source: nothing.
 * Source: [Practice, what to have at hand].
 *
 * @param course.raisingDays days of raising
 * @param course.holdDays days of the hold
 * @returns number of tests
 * @example testsNeeded({ raisingDays: 4, holdDays: 30 }) // = 42
 */
export function testsNeeded({ raisingDays, holdDays }: Course): number {
  const tests = 2 * Math.ceil(raisingDays) + Math.ceil(holdDays);
  // In tenths: 1.1 × 30 is 33.000000000000004 in binary.
  return Math.ceil((tests * 11) / 10);
}
