import { eventKinds, type WaterEvents } from '../../log/waterEvents.js';

/** The first reading after an event, -1 where there is none. */
export function nextReading({ count, kind }: WaterEvents, after: number): number {
  for (let index = after + 1; index < count; index++) if (kind[index] === eventKinds.reading) return index;
  return -1;
}
