import { heldFrom } from '../hold/heldFrom.js';
import type { Hold } from '../hold/holdTrace.js';
import { instantDays } from '../units/quantity.js';
import { firstLongEnough } from './holdAnswer.js';
import type { Treatment } from './treatment.js';

/** A hold that counts toward the treatment. */
export interface CountedHold {
  readonly hold: Hold;
  /** Its days begin here. [serial day] */
  readonly from: number;
  /** Here it has lasted the wanted days, if it lasts: what comes later takes nothing away. [serial day] */
  readonly reached: number;
  /** When it ended: the reading below, or the test after too long a stretch; Infinity while it runs. [serial day] */
  readonly end: number;
  readonly isEnough: boolean;
}

/** The holds up to the first that was long enough, in time order. One over before the arrival is left out. */
export function countedHolds({ trace, terms, card, readings }: Treatment): readonly CountedHold[] {
  const enough = firstLongEnough(trace, terms, card.days);
  const counted: CountedHold[] = [];
  for (const hold of trace.holds) {
    const { endedBy } = hold;
    if (endedBy.kind === 'running' || hold.to > (terms.arrived ?? -Infinity) - instantDays) {
      const from = heldFrom(hold, terms.arrived);
      const end = endedBy.kind === 'running' ? Infinity : (readings.when[endedBy.index] ?? NaN);
      counted.push({ hold, from, reached: from + card.days, end, isEnough: hold === enough });
    }
    if (hold === enough) break;
  }
  return counted;
}

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
