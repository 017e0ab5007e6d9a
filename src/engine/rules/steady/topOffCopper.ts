import { eventKinds } from '../../log/waterEvents.js';
import type { Treatment } from '../treatment.js';
import { wandering } from '../../level/wandering.js';
import type { SteadyLevels } from './steadyLevels.js';
import { fates } from './steadyPass.js';

/** Copper that the top-off water must have carried for the level to have gone as it did. [mg/L] */
interface TopOffCopper {
  readonly level: number;
  /** Standard deviation of it. */
  readonly spread: number;
}

/**
 * Copper in the top-off water, from how the level goes.
 *
 * ĉ = Σ h·v ÷ F ÷ Σ h² ÷ F, spread = 1 ÷ √Σ h² ÷ F; v: what a reading is off by if top-offs brought none; h: what it
 * would be off by for each mg/L in them, carried along by the same filter
 *
 * Basis: the filter of `steadyPass`, begun again at the event given and at jumps, stray readings left out.
 * Definition: weighted least squares of a constant input of a linear filter (from memory).
 *
 * @param treatment its events and model
 * @param steady fates of the readings, and the rate of loss
 * @param from event to begin with
 * @returns level and spread [mg/L]; a spread of Infinity where no top-off counts
 */
export function topOffCopper({ events, levels }: Treatment, steady: SteadyLevels, from: number): TopOffCopper {
  let [level, variance, input, product, weight] = [0, Infinity, 0, 0, 0];
  if (levels === null) return { level: 0, spread: Infinity };
  const { steps, course, filtered } = levels.path;
  const isCourse = steady.rate === course.rate;
  for (let index = from; index < events.count; index++) {
    const days = steps.elapsed[index] ?? NaN;
    const share = steps.share[index] ?? NaN;
    const kept = share * (isCourse ? (filtered.decay[index] ?? NaN) : Math.exp(-steady.rate * days));
    level = kept * level + (steps.added[index] ?? NaN);
    const isKnown = isCourse && share === 1;
    const drifted = isKnown ? filtered.drifted[index] : (share * course.drift) ** 2 * wandering(steady.rate, days);
    variance = (kept === 0 ? 0 : kept * kept * variance) + (drifted ?? NaN);
    const isTopOff = events.kind[index] === eventKinds.topOff;
    input = kept * input + (isTopOff ? (events.amount[index] ?? NaN) / (steps.volume[index] ?? NaN) : 0);
    const fate = steady.fate[index];
    if (fate !== fates.fits && fate !== fates.jump) continue;
    const thick = steps.thickAfter[index] ?? NaN;
    const read = steps.read[index] ?? NaN;
    const noise = steps.noise[index] ?? NaN;
    if (variance === Infinity || fate === fates.jump) {
      level = read / thick;
      variance = noise / (thick * thick);
      input = 0;
      continue;
    }
    const total = thick * thick * variance + noise;
    const off = read - thick * level;
    product += (thick * input * off) / total;
    weight += (thick * input) ** 2 / total;
    const gain = (thick * variance) / total;
    level += gain * off;
    input -= gain * thick * input;
    variance = (variance * noise) / total;
  }
  return weight > 0 ? { level: product / weight, spread: 1 / Math.sqrt(weight) } : { level: 0, spread: Infinity };
}
