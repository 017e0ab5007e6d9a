import type { LevelSteps } from '../../level/levelSteps.js';

/** A reading written to 0.01 mg/L may be off by half of that either way. [(mg/L)²] */
const rounding = 0.01 ** 2 / 12;

/** Variance of a reading: the meter's error, and what is rounded away. [(mg/L)²] */
export function readingError({ noise }: LevelSteps, index: number): number {
  return (noise[index] ?? NaN) + rounding;
}
