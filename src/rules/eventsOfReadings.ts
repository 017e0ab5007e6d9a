import { eventKinds } from '../log/waterEvents.js';
import type { Treatment } from './treatment.js';

/** The event that each reading is, in the order of the readings. */
export function eventsOfReadings({ events, readings }: Treatment): Uint32Array {
  const indices = new Uint32Array(readings.count);
  let next = 0;
  for (let index = 0; index < events.count; index++) {
    if (events.kind[index] === eventKinds.reading) indices[next++] = index;
  }
  return indices;
}
