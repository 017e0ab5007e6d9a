import { levelTolerance } from '../units/quantity.js';
import type { CountedHold } from './countedHolds.js';
import { meterErrorAt } from './meterError.js';
import { stoppedHold } from './stoppedHold.js';
import type { Treatment } from './treatment.js';

/** A hold that a reading below the low limit broke. */
export interface BrokenHold {
  readonly counted: CountedHold;
  /** The reading below, and its row. */
  readonly index: number;
  readonly row: number;
  /** The hold that came next, if one did. */
  readonly next: CountedHold | undefined;
}

/**
 * The breaks of a treatment, for the verdict's count and for the rows found alike.
 *
 * Definition: every counted hold that ended by a reading below. Not one that was long enough, not one that was ended on
 * purpose, and not the first where it is a single reading just over the limit that one just under it follows: the level
 * still crosses the limit as it is raised.
 *
 * @param treatment its readings and card
 * @param counted its holds, as `countedHolds` gives them
 * @returns breaks in time order
 */
export function brokenHolds(treatment: Treatment, counted: readonly CountedHold[]): readonly BrokenHold[] {
  const stopped = stoppedHold(treatment)?.counted.hold ?? null;
  const broken: BrokenHold[] = [];
  counted.forEach((one, at) => {
    const { endedBy } = one.hold;
    if (endedBy.kind !== 'below' || one.isEnough || one.hold === stopped) return;
    if (at === 0 && isCrossing(treatment, one)) return;
    broken.push({ counted: one, index: endedBy.index, row: endedBy.row, next: counted[at + 1] });
  });
  return broken;
}

/** The level crosses the limit: one reading just over it, the next just under it. */
function isCrossing({ readings, terms, card }: Treatment, { hold }: CountedHold): boolean {
  if (hold.endedBy.kind !== 'below' || hold.to > hold.from) return false;
  const over = readings.low[hold.firstIndex] ?? NaN;
  const under = readings.low[hold.endedBy.index] ?? NaN;
  const within = (level: number): boolean => Math.abs(level - terms.low) <= meterErrorAt(card, level) + levelTolerance;
  return within(over) && within(under);
}
