import { eventKinds, type WaterEvents } from '../../log/waterEvents.js';

/** The first reading after an event, -1 where there is none. */
export function nextReading({ count, kind }: WaterEvents, after: number): number {
  for (let index = after + 1; index < count; index++) if (kind[index] === eventKinds.reading) return index;
  return -1;
}

/** Whether a dose was given after an event and before the next reading. */
export function dosedBeforeNextTest({ count, kind }: WaterEvents, index: number): boolean {
  for (let at = index + 1; at < count && kind[at] !== eventKinds.reading; at++) {
    if (kind[at] === eventKinds.dose) return true;
  }
  return false;
}
