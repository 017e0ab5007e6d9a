import { eventKinds, type WaterEvents } from '../../log/waterEvents.js';

/** Whether a dose was given after an event and before the next reading. */
export function dosedBeforeNextTest({ count, kind }: WaterEvents, index: number): boolean {
  for (let at = index + 1; at < count && kind[at] !== eventKinds.reading; at++) {
    if (kind[at] === eventKinds.dose) return true;
  }
  return false;
}
