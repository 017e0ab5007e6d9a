import { fates } from './steadyPass.js';
import type { SteadyLevels } from './steadyLevels.js';
import { eventKinds } from '../../log/waterEvents.js';
import type { Treatment } from '../treatment.js';

/**
 * The level in the tank just before an event, from the reading before it and what was done since; NaN where there is
 * none. A stray reading counts as what was expected of it.
 */
export function levelBefore({ events, levels }: Treatment, steady: SteadyLevels, index: number): number {
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
