import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { hoursPerDay, instantDays } from '../units/quantity.js';
import { leastSquaresLine, type LeastSquaresLine } from './leastSquaresLine.js';
import { lossFault, type LossReading } from './lossFault.js';
import { studentHalfWidth } from './studentHalfWidth.js';

/** How fast copper is lost, in percent a day, with the 95 % interval of that rate. */
export type LossRate =
  | { readonly verdict: 'too-few-readings' }
  | {
      readonly verdict: 'absorbs' | 'rises' | 'no-loss-shown';
      readonly percentADay: number;
      readonly low: number;
      readonly high: number;
      /** null where the level never moved: there is nothing to explain. */
      readonly rSquared: number | null;
    };

/**
 * The loss of copper a day, as a constant share of the level. With nothing added it is the bench test of a rock or of
 * filter media in a bucket of copper water.
 *
 * z = ln C + Σ ln((C − rise) ÷ C) so far, a straight line on time of slope −k; % a day = 100·(1 − e^−k)
 *
 * Basis: C in mg/L, time in days; each rise is taken as added just before its reading.
 * Validity: three instants or more, levels above 0, each rise below its reading. At one instant (readings less than half
 * a second apart) the lowest level counts, and the rises add up. Where no z differs from their mean by more than
 * rounding does, the rate and both its ends are 0 and R² is undefined.
 * Definition: least squares of z on time; 95 % interval of the slope by Student's t; Low above 0 absorbs, High below 0 rises.
 *
 * @param readings in any order
 * @returns rate, the ends of its interval [% a day], R² [1] and verdict
 */
export function lossRate(readings: readonly LossReading[]): Result<LossRate, Problem> {
  const instants = byInstant(readings);
  const fault = lossFault(readings) ?? lossFault(instants);
  if (fault !== null) return refuse(fault);
  const first = instants[0]?.when ?? 0;
  const last = instants[instants.length - 1]?.when ?? 0;
  if (instants.length < 3) return ok({ verdict: 'too-few-readings' });
  const line = leastSquaresLine(
    instants.map(({ when }) => when - first),
    logarithms(instants),
  );
  const rate = isFlat(line, instants.length) ? flat : rateOf(line);
  const isFinite = [rate.percentADay, rate.low, rate.high].every(Number.isFinite);
  return isFinite ? ok(rate) : refuse({ code: 'readings-too-close', hours: (last - first) * hoursPerDay });
}

/** One reading an instant, in time order. */
function byInstant(readings: readonly LossReading[]): LossReading[] {
  const sorted = [...readings].sort((a, b) => a.when - b.when || a.row - b.row);
  const instants: LossReading[] = [];
  let start = -Infinity;
  for (const reading of sorted) {
    const before = instants[instants.length - 1];
    if (before === undefined || reading.when - start >= instantDays) {
      instants.push(reading);
      start = reading.when;
      continue;
    }
    const lower = reading.low < before.low ? reading : before;
    instants[instants.length - 1] = { ...lower, when: before.when, rise: before.rise + reading.rise };
  }
  return instants;
}

/** ln C less what the rises so far added to it. */
function logarithms(instants: readonly LossReading[]): number[] {
  let added = 0;
  return instants.map(({ low, rise }) => {
    added += Math.log1p(-rise / low);
    return Math.log(low) + added;
  });
}

/** Logarithms of readings are rounded at about 1e-15; no meter shows 1e-12. */
function isFlat({ totalSquares }: LeastSquaresLine, count: number): boolean {
  return totalSquares <= count * 1e-24;
}

const flat = { percentADay: 0, low: 0, high: 0, rSquared: null, verdict: 'no-loss-shown' } as const;

function rateOf({ slope, slopeDeviation, residualSquares, totalSquares, freedom }: LeastSquaresLine) {
  const half = studentHalfWidth(0.95, freedom) * slopeDeviation;
  const low = percentLost(slope + half);
  const high = percentLost(slope - half);
  const verdict = low > 0 ? 'absorbs' : high < 0 ? 'rises' : 'no-loss-shown';
  return { percentADay: percentLost(slope), low, high, rSquared: 1 - residualSquares / totalSquares, verdict } as const;
}

function percentLost(slope: number): number {
  // Adding 0 turns −0 into 0.
  return -100 * Math.expm1(slope) + 0;
}
