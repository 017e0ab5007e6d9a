import * as limits from '../../limits/limits.js';
import { readingError, carry, startAt, type Known, type Passing } from './steadyKnown.js';

/** What becomes of a reading. `last`: it lies far off and no reading comes after it. */
export const fates = { none: 0, fits: 1, stray: 2, jump: 3, last: 4 } as const;

/** Each reading beside what those before it lead to expect, a column each; NaN where there is nothing to compare. */
export interface SteadyPass {
  /** In the tank [mg/L], and its standard deviation, the meter's error included. */
  readonly predicted: Float64Array;
  readonly spread: Float64Array;
  /** (Reading − predicted) ÷ spread. */
  readonly off: Float64Array;
  /** One of `fates`. */
  readonly fate: Uint8Array;
  /** No reading lies outside the gate. */
  readonly allFit: boolean;
  /** −2·ln of the likelihood, each reading's part of it cut at the gate. */
  readonly cost: number;
}

/** So many standard deviations off, and a reading does not fit. */
export const gate = limits.gate.value;

/**
 * Kalman's filter that a stray reading does not lead astray.
 *
 * A reading within the gate is taken in. One outside is left out where the next reading agrees with what was expected
 * without it (a stray), and the filter starts again from it where the next reading agrees with it (a jump).
 *
 * Basis: the model of `filteredLevels` and the rounding of readings to 0.01 mg/L; where the next reading settles
 *   nothing the one after it decides.
 * Definition: gating with a look ahead (from memory).
 *
 * @param passing.steps of the events
 * @param passing.course loss and drift
 * @param passing.scale of the spreads [1]
 * @param passing.count events to look at
 * @param passing.filtered what `filteredLevels` made of the same steps and course, if it is at hand
 * @returns a column each
 */
export function steadyPass(passing: Passing): SteadyPass {
  const { steps, scale, count } = passing;
  const pass = emptyPass(count);
  const known: Known = { level: 0, variance: Infinity };
  for (let index = 0; index < count; index++) {
    carry(known, passing, index);
    const reading = steps.read[index] ?? NaN;
    if (!(reading === reading)) continue;
    if (known.variance === Infinity) {
      startAt(known, passing, index);
      pass.fate[index] = fates.fits;
      continue;
    }
    const thick = steps.thickAfter[index] ?? NaN;
    const error = readingError(steps, index);
    const total = thick * thick * known.variance + error;
    const spread = scale * Math.sqrt(total);
    const predicted = thick * known.level;
    const off = (reading - predicted) / spread;
    pass.predicted[index] = predicted;
    pass.spread[index] = spread;
    pass.off[index] = off;
    pass.cost += 2 * Math.log(spread) + Math.min(off * off, gate * gate);
    const fate = Math.abs(off) <= gate ? fates.fits : fateOf(known, passing, index);
    pass.fate[index] = fate;
    if (fate === fates.fits) {
      known.level += ((thick * known.variance) / total) * (reading - predicted);
      known.variance = (known.variance * error) / total;
    } else pass.allFit = false;
    if (fate === fates.jump) startAt(known, passing, index);
  }
  return pass;
}

function emptyPass(count: number) {
  const column = () => new Float64Array(count).fill(NaN);
  return {
    predicted: column(),
    spread: column(),
    off: column(),
    fate: new Uint8Array(count),
    allFit: true,
    cost: 0,
  };
}

/** The next readings decide whether the level is where it was expected, or where this one says. */
function fateOf(known: Known, passing: Passing, index: number): number {
  const without = { ...known };
  const from = { ...known };
  startAt(from, passing, index);
  let decided = false;
  let at = index;
  for (let look = 0; look < 2; look++) {
    const next = nextReading(passing, at);
    if (next < 0) break;
    const offWithout = offAt(without, passing, at, next);
    const offFrom = offAt(from, passing, at, next);
    decided = true;
    if (offWithout <= gate && offWithout <= offFrom) return fates.stray;
    if (offFrom <= gate) return fates.jump;
    at = next;
  }
  return decided ? fates.jump : fates.last;
}

/** Carries what is known to a later reading, and says how far off that lies. */
function offAt(known: Known, passing: Passing, from: number, to: number): number {
  for (let index = from + 1; index <= to; index++) carry(known, passing, index);
  const { steps, scale } = passing;
  const thick = steps.thickAfter[to] ?? NaN;
  const spread = scale * Math.sqrt(thick * thick * known.variance + readingError(steps, to));
  return Math.abs((steps.read[to] ?? NaN) - thick * known.level) / spread;
}

function nextReading({ steps, count }: Passing, after: number): number {
  for (let index = after + 1; index < count; index++) {
    const reading = steps.read[index] ?? NaN;
    if (reading === reading) return index;
  }
  return -1;
}
