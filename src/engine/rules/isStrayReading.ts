import * as limits from '../limits/limits.js';
import { steadyLevels } from './steady/steadyLevels.js';
import type { Treatment } from './treatment.js';
import { eventKinds } from '../log/waterEvents.js';

/** Whether a reading for whose row a cause is named is itself the slip, and not merely in the row of one. */
export function isStrayReading(treatment: Treatment, named: ReadonlySet<number>, reading: number): boolean {
  if (!named.has(treatment.readings.row[reading] ?? 0)) return false;
  const off = steadyLevels(treatment)?.off[eventsOfReadings(treatment)[reading] ?? 0] ?? NaN;
  return Number.isNaN(off) || Math.abs(off) > limits.strayOff.value;
}

const known = new WeakMap<Treatment, Uint32Array>();

/** The event that each reading is, in the order of the readings. */
export function eventsOfReadings(treatment: Treatment): Uint32Array {
  const before = known.get(treatment);
  if (before !== undefined) return before;
  const { events, readings } = treatment;
  const indices = new Uint32Array(readings.count);
  let next = 0;
  for (let index = 0; index < events.count; index++) {
    if (events.kind[index] === eventKinds.reading) indices[next++] = index;
  }
  known.set(treatment, indices);
  return indices;
}
