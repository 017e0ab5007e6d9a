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
  /** Doses after it: the last, and what all of them raised. [serial day, mg/L] */
  readonly dosedAt: number | null;
  readonly dosed: number;
  /** The last change after it, null: none. [serial day] */
  readonly changedAt: number | null;
}

/** The last test of a log; null where there is none. */
export function lastTest({ events, card }: Treatment): LastTest | null {
  const { count, kind, when, amount, detail, row } = events;
  let dosedAt: number | null = null;
  let dosed = 0;
  let changedAt: number | null = null;
  for (let index = count - 1; index >= 0; index--) {
    const at = when[index] ?? NaN;
    if (kind[index] === eventKinds.dose) {
      dosedAt = dosedAt ?? at;
      dosed += ((amount[index] ?? NaN) * (card.strength ?? NaN)) / card.volume;
    } else if (kind[index] === eventKinds.change) changedAt = changedAt ?? at;
    else if (kind[index] === eventKinds.reading) {
      let low = amount[index] ?? NaN;
      let high = detail[index] ?? NaN;
      for (let before = index - 1; before >= 0 && at - (when[before] ?? NaN) < instantDays; before--) {
        if (kind[before] !== eventKinds.reading) continue;
        low = Math.min(low, amount[before] ?? NaN);
        high = Math.max(high, detail[before] ?? NaN);
      }
      return { when: at, low, high, row: row[index] ?? 0, dosedAt, dosed, changedAt };
    }
  }
  return null;
}
