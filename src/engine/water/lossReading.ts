import type { SerialDay } from '../units/quantity.js';

/** A copper reading and what was added since the one before. */
export interface LossReading {
  readonly when: SerialDay;
  /** The low end counts. [mg/L] */
  readonly low: number;
  /** Infinity where the meter only said "more than". [mg/L] */
  readonly high: number;
  /** Copper added since the reading before, taken as added just before this one. [mg/L] */
  readonly rise: number;
  /** The n-th row of the range given. */
  readonly row: number;
}
