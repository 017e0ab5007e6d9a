import type { WaterEvents } from '../log/waterEvents.js';
import type { SerialDay } from '../units/quantity.js';
import { levelAfter, type LevelThen } from './levelAfter.js';
import type { LevelModel } from './levelModel.js';

/**
 * The level in the tank at any moment from the first event on, with its 95 % band.
 *
 * Basis: between two events both sides of the log count (`levelAfter`); after the last one the level goes on falling at
 *   the rate of loss, water goes on evaporating as it did, and the band widens with the drift. At an event itself it is
 *   the level right after it.
 * Validity: null before the first event and where nothing is known.
 * Definition: the model's own course.
 *
 * @param events of one system
 * @param model of the same events
 * @param when [serial day]
 * @returns level and band [mg/L]
 */
export function levelAt(events: WaterEvents, model: LevelModel, when: SerialDay): LevelThen | null {
  const index = lastBy(events.when, events.count, when);
  if (index < 0) return null;
  const level = levelAfter(model.path, index, when - (events.when[index] ?? NaN));
  return Number.isNaN(level.expected) ? null : level;
}

/** The last event that is not later, -1 if all are. */
function lastBy(times: Float64Array, count: number, when: number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((times[middle] ?? NaN) <= when) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
