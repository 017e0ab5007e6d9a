import type { FilteredLevels } from './filteredLevels.js';
import type { LevelSteps } from './levelSteps.js';

/** What is known of the level of the full system from the whole log, a column each. NaN: nothing. */
export interface SmoothedLevels {
  /** Right after each event. */
  readonly mean: Float64Array;
  readonly variance: Float64Array;
  /** Before the first event: mean and variance. */
  readonly start: { readonly mean: number; readonly variance: number };
}

/**
 * The level right after each event, given the whole log: the fixed-interval smoother of Rauch, Tung and Striebel.
 *
 * J = P·T ÷ P⁻_next;  M = m + J·(M_next − m⁻_next);  V = P·share²·Q ÷ P⁻_next + J²·V_next;  Q = drift²·q(t)
 *
 * Basis: T, m, P, q of `filteredLevels`. While nothing was known (P = Infinity) the limits are J = 1 ÷ T and
 *   V = (share²·Q + V_next) ÷ T²; before a change of all the water with nothing known, nothing is known.
 * Definition: Rauch, Tung and Striebel's smoother and its exact diffuse limit (from memory).
 *
 * @param steps of the events
 * @param filtered the filter's columns
 * @returns a column each [mg/L, (mg/L)²]
 */
export function smoothedLevels({ count, share, added }: LevelSteps, filtered: FilteredLevels): SmoothedLevels {
  const { decay, drifted, ahead, aheadVariance } = filtered;
  const mean = new Float64Array(count);
  const variance = new Float64Array(count);
  let level = filtered.mean[count - 1] ?? NaN;
  let uncertain = filtered.variance[count - 1] ?? NaN;
  for (let index = count - 1; index >= 0; index--) {
    mean[index] = level;
    variance[index] = uncertain;
    const left = share[index] ?? NaN;
    const kept = left * (decay[index] ?? NaN);
    const drift = left * left * (drifted[index] ?? NaN);
    const before = index > 0 ? (filtered.variance[index - 1] ?? NaN) : Infinity;
    const expected = aheadVariance[index] ?? NaN;
    const surprise = level - (ahead[index] ?? NaN);
    if (before === Infinity) {
      level = kept * kept === 0 ? NaN : (level - (added[index] ?? NaN)) / kept;
      uncertain = kept * kept === 0 ? NaN : (uncertain + drift) / (kept * kept);
    } else {
      const gain = expected > 0 ? (before * kept) / expected : 0;
      level = (filtered.mean[index - 1] ?? NaN) + gain * surprise;
      uncertain = (expected > 0 ? (before * drift) / expected : before) + gain * gain * uncertain;
    }
  }
  return { mean, variance, start: { mean: level, variance: uncertain } };
}
