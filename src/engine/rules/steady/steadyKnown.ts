import type { Course, FilteredLevels } from '../../level/filteredLevels.js';
import type { LevelSteps } from '../../level/levelSteps.js';
import { wandering } from '../../level/wandering.js';

/** The level of the full system, and the variance of what is known of it; Infinity: nothing is. */
export interface Known {
  level: number;
  variance: number;
}

/** What a filter that keeps out stray readings goes through. */
export interface Passing {
  readonly steps: LevelSteps;
  readonly course: Course;
  /** The readings' errors, and so on, are so many times as wide as the card says. */
  readonly scale: number;
  /** Events to look at, from the first. */
  readonly count: number;
  /** Of the same steps and course, where it is at hand: its exponentials are not worked out again. */
  readonly filtered?: FilteredLevels;
}

/** What is known once an event has happened, its reading left out. */
export function carry(known: Known, { steps, course, filtered }: Passing, index: number): void {
  const days = steps.elapsed[index] ?? NaN;
  const share = steps.share[index] ?? NaN;
  if (days === 0 && share === 1) {
    known.level += steps.added[index] ?? NaN;
    return;
  }
  const kept = share * (filtered === undefined ? Math.exp(-course.rate * days) : (filtered.decay[index] ?? NaN));
  known.level = kept * known.level + (steps.added[index] ?? NaN);
  const drifted =
    filtered !== undefined && share === 1
      ? (filtered.drifted[index] ?? NaN)
      : share * share * (course.drift * course.drift) * wandering(course.rate, days);
  known.variance = (kept === 0 ? 0 : kept * kept * known.variance) + drifted;
}

/** The level as a reading alone shows it. */
export function startAt(known: Known, { steps }: Passing, index: number): void {
  const thick = steps.thickAfter[index] ?? NaN;
  known.level = (steps.read[index] ?? NaN) / thick;
  known.variance = readingError(steps, index) / (thick * thick);
}

/** A reading written to 0.01 mg/L may be off by half of that either way. [(mg/L)²] */
const rounding = 0.01 ** 2 / 12;

/** Variance of a reading: the meter's error, and what is rounded away. [(mg/L)²] */
export function readingError({ noise }: LevelSteps, index: number): number {
  return (noise[index] ?? NaN) + rounding;
}
