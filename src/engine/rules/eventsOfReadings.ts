import { eventKinds } from '../log/waterEvents.js';
import type { Treatment } from './treatment.js';

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
