import type { LevelSteps } from './levelSteps.js';
import { wandering } from './wandering.js';

/** What is known of the level of the full system from the events up to each, a column each. */
export interface FilteredLevels {
  /** Right after each event, its own reading left out. Variance Infinity: nothing is known, and the mean says nothing. */
  readonly ahead: Float64Array;
  readonly aheadVariance: Float64Array;
  /** Right after each event, its own reading taken in. */
  readonly mean: Float64Array;
  readonly variance: Float64Array;
  /** e^(−k·t): what the loss since the event before leaves of the level. */
  readonly decay: Float64Array;
  /** Variance that drift puts in since the event before. */
  readonly drifted: Float64Array;
}

/** How the level changes by itself: lost at a rate [1/day], with a drift [mg/L per √day]. */
export interface Course {
  readonly rate: number;
  readonly drift: number;
}

/**
 * The level right after each event, given the log up to it: Kalman's filter with one state.
 *
 * T = share·e^(−k·t); m⁻ = T·m + added; P⁻ = T²·P + share²·drift²·q(t)
 * a reading y = thick·level + error of variance R: F = thick²·P⁻ + R; m = m⁻ + P⁻·thick·(y − thick·m⁻) ÷ F; P = P⁻·R ÷ F
 *
 * Basis: before the first event anything goes: an improper flat prior, held exactly as variance Infinity and not as a
 *   large number. It ends at the first reading, m = y ÷ thick and P = R ÷ thick², or at a change of all the water.
 * Definition: Kalman's filter with exact diffuse initialisation (from memory).
 *
 * @param steps of the events
 * @param course loss and drift
 * @param columns to write over: those of a filter of the same steps that is no longer needed
 * @returns a column each [mg/L, (mg/L)²]
 */
export function filteredLevels(
  steps: LevelSteps,
  course: Course,
  columns: FilteredLevels = emptyColumns(steps.count),
): FilteredLevels {
  const { count, elapsed, share, added, thickAfter, read, noise } = steps;
  const { ahead, aheadVariance, mean, variance, decay, drifted } = columns;
  const { rate } = course;
  const driftVariance = course.drift * course.drift;
  let level = 0;
  let uncertain = Infinity;
  for (let index = 0; index < count; index++) {
    const days = elapsed[index] ?? NaN;
    const left = share[index] ?? NaN;
    // Of several events in one row all but the first come at once.
    const decayed = days === 0 ? 1 : Math.exp(-rate * days);
    const drift = days === 0 ? 0 : driftVariance * wandering(rate, days);
    const kept = left * decayed;
    level = kept * level + (added[index] ?? NaN);
    // Infinity·0 is no number.
    uncertain = left * left * drift + (kept * kept === 0 ? 0 : kept * kept * uncertain);
    decay[index] = decayed;
    drifted[index] = drift;
    ahead[index] = level;
    aheadVariance[index] = uncertain;
    const reading = read[index] ?? NaN;
    if (reading === reading) {
      const thick = thickAfter[index] ?? NaN;
      const error = noise[index] ?? NaN;
      const spread = thick * thick * uncertain + error;
      level =
        uncertain === Infinity ? reading / thick : level + ((uncertain * thick) / spread) * (reading - thick * level);
      uncertain = uncertain === Infinity ? error / (thick * thick) : (uncertain * error) / spread;
    }
    mean[index] = level;
    variance[index] = uncertain;
  }
  return columns;
}

function emptyColumns(count: number): FilteredLevels {
  const column = () => new Float64Array(count);
  return {
    ahead: column(),
    aheadVariance: column(),
    mean: column(),
    variance: column(),
    decay: column(),
    drifted: column(),
  };
}
