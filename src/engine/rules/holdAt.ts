import { instantDays } from '../units/quantity.js';
import type { CountedHold } from './countedHolds.js';

/** The hold that ran at a moment; null: none did. */
export function holdAt(holds: readonly CountedHold[], when: number): CountedHold | null {
  let first = 0;
  let after = holds.length;
  while (first < after) {
    const middle = (first + after) >>> 1;
    if ((holds[middle]?.hold.from ?? Infinity) - when < instantDays) first = middle + 1;
    else after = middle;
  }
  const hold = holds[first - 1];
  return hold !== undefined && hold.end - when >= instantDays ? hold : null;
}
