import type { LevelSteps } from '../../level/levelSteps.js';

/** What is left at a later event of copper added at an event, as part of the level in the tank: loss, changes, thickness. */
export function carriedShare(steps: LevelSteps, rate: number, from: number, to: number): number {
  let left = steps.thickBefore[to] ?? NaN;
  for (let index = from + 1; index <= to; index++) {
    left *= (steps.share[index] ?? NaN) * Math.exp(-rate * (steps.elapsed[index] ?? NaN));
  }
  return left;
}
