import type { LevelSteps } from '../../level/levelSteps.js';
import { fates } from './steadyPass.js';
import type { SteadyLevels } from './steadyLevels.js';
import { eventKinds } from '../../log/waterEvents.js';
import type { Treatment } from '../treatment.js';

/** What is left at a later event of copper added at an event, as part of the level in the tank: loss, changes, thickness. */
export function carriedShare(steps: LevelSteps, rate: number, from: number, to: number): number {
  let left = steps.thickBefore[to] ?? NaN;
  for (let index = from + 1; index <= to; index++) {
    left *= (steps.share[index] ?? NaN) * Math.exp(-rate * (steps.elapsed[index] ?? NaN));
  }
  return left;
}

/**
 * The level in the tank just before an event, from the reading before it and what was done since; NaN where there is
 * none. A stray reading counts as what was expected of it.
 */
export function levelBefore(
  { events, levels }: Pick<Treatment, 'events' | 'levels'>,
  steady: SteadyLevels,
  index: number,
): number {
  let from = index - 1;
  while (from >= 0 && events.kind[from] !== eventKinds.reading) from--;
  if (from < 0 || levels === null) return NaN;
  const isAstray = steady.fate[from] === fates.stray || steady.fate[from] === fates.last;
  const { share, added, elapsed } = levels.path.steps;
  let level = (isAstray ? steady.predicted[from] : events.amount[from]) ?? NaN;
  for (let at = from + 1; at <= index; at++) {
    level *= Math.exp(-steady.rate * (elapsed[at] ?? NaN));
    if (at < index) level = level * (share[at] ?? NaN) + (added[at] ?? NaN);
  }
  return level;
}
