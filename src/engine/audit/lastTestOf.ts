import * as limits from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import type { Treatment } from '../rules/treatment.js';
import { instantDays } from '../units/quantity.js';

/** The last test, and what was done to the water since. */
export interface LastTest {
  /** [serial day] */
  readonly when: number;
  /** The lowest and the highest end of its instant. [mg/L] */
  readonly low: number;
  readonly high: number;
  readonly row: number;
  /** The last dose and change after it, null: none. [serial day] */
  readonly dosedSince: number | null;
  readonly changedSince: number | null;
}

/** The last test of a log; null where there is none. */
export function lastTestOf({ events }: Treatment): LastTest | null {
  const { count, kind, when, amount, detail, row } = events;
  let dosedSince: number | null = null;
  let changedSince: number | null = null;
  for (let index = count - 1; index >= 0; index--) {
    const at = when[index] ?? NaN;
    if (kind[index] === eventKinds.dose) dosedSince = dosedSince ?? at;
    else if (kind[index] === eventKinds.change) changedSince = changedSince ?? at;
    else if (kind[index] === eventKinds.reading) {
      let low = amount[index] ?? NaN;
      let high = detail[index] ?? NaN;
      for (let before = index - 1; before >= 0 && at - (when[before] ?? NaN) < instantDays; before--) {
        if (kind[before] !== eventKinds.reading) continue;
        low = Math.min(low, amount[before] ?? NaN);
        high = Math.max(high, detail[before] ?? NaN);
      }
      return { when: at, low, high, row: row[index] ?? 0, dosedSince, changedSince };
    }
  }
  return null;
}

/** How old the last test may be: 36 h in the hold, 12 h while raising, 6 h when that is urgent. Common practice. [h] */
export function testLimitHours({ trace, card }: Treatment): number {
  if (trace.running !== null) return limits.testAgeHolding.value;
  return card.pace === 'urgent' ? limits.testAgeUrgent.value : limits.testAgeRaising.value;
}
