import { bandSpreads } from './levelSteps.js';
import { thickness } from './thickness.js';
import { wandering } from './wandering.js';
import type { Course, FilteredLevels } from './filteredLevels.js';
import type { LevelSteps } from './levelSteps.js';
import type { SmoothedLevels } from './smoothedLevels.js';

/** All that a model knows of the level of the full system, from event to event. */
export interface LevelPath {
  readonly course: Course;
  /** Standard deviation of the rate of loss. [1/day] */
  readonly rateSpread: number;
  readonly steps: LevelSteps;
  readonly filtered: FilteredLevels;
  readonly smoothed: SmoothedLevels;
  /** How the smoothed level after each event changes with the rate of loss. [mg/L per 1/day] */
  readonly sensitivity: Float64Array;
}

/** The level in the tank at one moment, with its 95 % band. [mg/L] */
export interface LevelThen {
  readonly expected: number;
  readonly low: number;
  readonly high: number;
}

interface Guess {
  readonly mean: number;
  readonly variance: number;
  readonly sensitivity: number;
}

/**
 * The level some days after an event and before the next, or after the last one.
 *
 * after the last: m = e^(−k·τ)·M, P = e^(−2kτ)·V + drift²·q(τ)
 * before the next: as the smoother, from the filter's P at τ to the next event with what is left of the time
 *
 * Basis: the band of `levelBands`; how the level depends on the rate is drawn straight between two events.
 * Validity: τ from 0 to the next event. NaN where nothing is known.
 * Definition: prediction and fixed-point smoothing of `filteredLevels`.
 *
 * @param path what the model knows
 * @param index the event
 * @param days τ, since that event [days]
 * @returns level and band [mg/L]
 */
export function levelAfter(path: LevelPath, index: number, days: number): LevelThen {
  const isLast = index === path.steps.count - 1;
  const { mean, variance, sensitivity } = isLast ? predicted(path, index, days) : bridged(path, index, days);
  const half = bandSpreads * Math.sqrt(variance + (sensitivity * path.rateSpread) ** 2);
  const thick = thickness(missing(path, index, days), path.steps.volume[index] ?? NaN);
  const level = (x: number) => (x < 0 ? 0 : thick * x);
  return { expected: level(mean), low: level(mean - half), high: level(mean + half) };
}

function predicted({ course, smoothed, sensitivity }: LevelPath, index: number, days: number): Guess {
  const decay = Math.exp(-course.rate * days);
  const mean = smoothed.mean[index] ?? NaN;
  return {
    mean: decay * mean,
    variance: decay * decay * (smoothed.variance[index] ?? NaN) + course.drift ** 2 * wandering(course.rate, days),
    sensitivity: decay * ((sensitivity[index] ?? NaN) - days * mean),
  };
}

function bridged({ course, steps, filtered, smoothed, sensitivity }: LevelPath, index: number, days: number): Guess {
  const { rate, drift } = course;
  const next = index + 1;
  const rest = Math.max(0, (steps.elapsed[next] ?? NaN) - days);
  const share = steps.share[next] ?? NaN;
  const kept = share * Math.exp(-rate * rest);
  const drifted = share ** 2 * drift ** 2 * wandering(rate, rest);
  const decay = Math.exp(-rate * days);
  const mean = decay * (filtered.mean[index] ?? NaN);
  const variance = decay ** 2 * (filtered.variance[index] ?? NaN) + drift ** 2 * wandering(rate, days);
  const nextMean = smoothed.mean[next] ?? NaN;
  const nextVariance = smoothed.variance[next] ?? NaN;
  const part = days / Math.max(days + rest, Number.MIN_VALUE);
  const between = { sensitivity: (sensitivity[index] ?? NaN) * (1 - part) + (sensitivity[next] ?? NaN) * part };
  if (variance === Infinity) {
    const level = (nextMean - (steps.added[next] ?? NaN)) / kept;
    return kept === 0 ? unknown : { ...between, mean: level, variance: (nextVariance + drifted) / kept ** 2 };
  }
  const ahead = filtered.aheadVariance[next] ?? NaN;
  if (ahead === 0) return { ...between, mean, variance };
  const gain = (variance * kept) / ahead;
  return {
    ...between,
    mean: mean + gain * (nextMean - (filtered.ahead[next] ?? NaN)),
    variance: (variance * drifted) / ahead + gain ** 2 * nextVariance,
  };
}

const unknown: Guess = { mean: NaN, variance: NaN, sensitivity: NaN };

/** Litres evaporated. [L] */
function missing({ steps }: LevelPath, index: number, days: number): number {
  const { rate, most, missing: atEnd } = steps.evaporation;
  if (index === steps.count - 1) return Math.min(Math.max(most, atEnd), atEnd + rate * days);
  const volume = steps.volume[index] ?? NaN;
  const lost = (thick: number | undefined) => volume * (1 - 1 / (thick ?? NaN));
  const elapsed = steps.elapsed[index + 1] ?? NaN;
  const part = elapsed > 0 ? days / elapsed : 0;
  return lost(steps.thickAfter[index]) * (1 - part) + lost(steps.thickBefore[index + 1]) * part;
}
