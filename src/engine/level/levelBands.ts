import type { FilteredLevels } from './filteredLevels.js';
import { bandSpreads, type LevelSteps } from './levelSteps.js';
import type { SmoothedLevels } from './smoothedLevels.js';

/** The level in the tank with its 95 % band, never below 0; NaN where nothing is known of it. [mg/L] */
export interface LevelBands {
  /** Right after each event. */
  readonly expected: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Just before each event. */
  readonly expectedBefore: Float64Array;
  readonly highBefore: Float64Array;
}

interface Given {
  readonly steps: LevelSteps;
  readonly filtered: FilteredLevels;
  readonly smoothed: SmoothedLevels;
  /** How the smoothed level after each event changes with the rate of loss [mg/L per 1/day], and the rate's spread [1/day]. */
  readonly sensitivity: Float64Array;
  readonly rateSpread: number;
}

/**
 * Bands of the level in the tank.
 *
 * thick·(M ± 1.96·√(V + D²·spread²)),  D = dM ÷ dk
 * just before an event: of (M − added) ÷ share; before a change of all the water, of e^(−k·t)·M of the event before
 *
 * Basis: M, V of `smoothedLevels`, which take the rate as known; D carries the rate's own uncertainty into the band.
 * Definition: delta method.
 *
 * @returns a column each [mg/L]
 */
export function levelBands(given: Given): LevelBands {
  const { steps, smoothed, sensitivity, rateSpread } = given;
  const { count } = steps;
  const column = () => new Float64Array(count);
  const bands = { expected: column(), low: column(), high: column(), expectedBefore: column(), highBefore: column() };
  let level = smoothed.start.mean;
  let variance = smoothed.start.variance;
  for (let index = 0; index < count; index++) {
    const share = steps.share[index] ?? NaN;
    const thick = steps.thickAfter[index] ?? NaN;
    const mean = smoothed.mean[index] ?? NaN;
    const byRate = (sensitivity[index] ?? NaN) * rateSpread;
    const total = (smoothed.variance[index] ?? NaN) + byRate * byRate;
    const half = bandSpreads * Math.sqrt(total);
    bands.expected[index] = notNegative(thick * mean);
    bands.low[index] = notNegative(thick * (mean - half));
    bands.high[index] = notNegative(thick * (mean + half));
    if (share === 0) writeEmptied(bands, given, index, level, variance);
    else writeBefore(bands, steps, index, (mean - (steps.added[index] ?? NaN)) / share, half / share);
    level = mean;
    variance = total;
  }
  return bands;
}

function writeBefore(bands: LevelBands, steps: LevelSteps, index: number, level: number, half: number): void {
  const thick = steps.thickBefore[index] ?? NaN;
  bands.expectedBefore[index] = notNegative(thick * level);
  bands.highBefore[index] = notNegative(thick * (level + half));
}

/** Just before a change of all the water, of which nothing after it can tell. */
function writeEmptied(
  bands: LevelBands,
  { steps, filtered }: Given,
  index: number,
  level: number,
  variance: number,
): void {
  const decay = filtered.decay[index] ?? NaN;
  const total = decay * decay * variance + (filtered.drifted[index] ?? NaN);
  writeBefore(bands, steps, index, decay * level, bandSpreads * Math.sqrt(total));
}

/** Keeps NaN. */
function notNegative(level: number): number {
  return level < 0 ? 0 : level;
}
