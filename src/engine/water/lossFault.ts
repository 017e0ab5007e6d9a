import type { Problem } from '../result/problem.js';
import { shownNumber } from '../units/shown.js';
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

/** Why readings cannot enter the loss rate, by the lowest row at fault; null where all can. */
export function lossFault(readings: readonly LossReading[]): Problem | null {
  let lowest: LossReading | null = null;
  for (const reading of readings) {
    if ((lowest === null || reading.row < lowest.row) && faultOf(reading) !== null) lowest = reading;
  }
  return lowest === null ? null : faultOf(lowest);
}

function faultOf({ low, high, rise, row }: LossReading): Problem | null {
  if (low <= 0 || high === Infinity) return { code: 'not-one-level', row, given: asWritten(low, high) };
  return rise < low ? null : { code: 'rise-not-below-reading', row, rise, level: low };
}

function asWritten(low: number, high: number): string {
  if (high === Infinity) return `>${shownNumber(low)}`;
  return high > 0 ? `<${shownNumber(high)}` : '0';
}
