import { limits } from '../limits/limits.js';
import { eventsOfReadings } from './eventsOfReadings.js';
import { steadyLevels } from './steady/steadyLevels.js';
import type { Treatment } from './treatment.js';

/** Whether a reading for whose row a cause is named is itself the slip, and not merely in the row of one. */
export function isStrayReading(treatment: Treatment, named: ReadonlySet<number>, reading: number): boolean {
  if (!named.has(treatment.readings.row[reading] ?? 0)) return false;
  const off = steadyLevels(treatment)?.off[eventsOfReadings(treatment)[reading] ?? 0] ?? NaN;
  return Number.isNaN(off) || Math.abs(off) > limits.strayOff.value;
}
