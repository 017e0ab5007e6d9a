import type { ReadingColumns } from '../log/readingColumns.js';
import { instantDays, levelTolerance, secondDays } from '../units/quantity.js';
import type { HoldTerms } from './holdTerms.js';

/** A stretch of readings none of which is below the low limit. Indexes point into the columns it was traced from. */
export interface Hold {
  readonly firstIndex: number;
  /** The last of its readings, those of the same instant included. */
  readonly lastIndex: number;
  /** [serial day] */
  readonly from: number;
  /** Its last reading not below. [serial day] */
  readonly to: number;
  readonly endedBy: HoldEnd;
}

export type HoldEnd =
  | { readonly kind: 'below'; readonly index: number }
  | { readonly kind: 'untested'; readonly index: number; readonly days: number }
  | { readonly kind: 'running' };

export interface HoldTrace {
  readonly holds: readonly Hold[];
  /** The hold that the last reading belongs to. */
  readonly running: Hold | null;
  /** The lowest reading of the last instant, null where there is no reading. */
  readonly lastIndex: number | null;
  /** How many readings the trace saw: those not after `asOf`. */
  readonly count: number;
}

/**
 * The holds in a series of readings.
 *
 * Definition: a hold starts at the first reading at or above the low limit (with confirm 2 at the second of two in a
 * row, at different instants) and runs until a reading below. A stretch between tests longer than the longest gap
 * starts it anew at the later reading. Readings less than half a second apart are one instant, and its lowest counts.
 *
 * @param columns readings in time order
 * @param terms what counts as a hold
 * @returns every hold in time order
 */
export function traceHolds(columns: ReadingColumns, terms: HoldTerms): HoldTrace {
  const { when, low: level } = columns;
  const threshold = terms.low - levelTolerance;
  const longestGap = terms.longestGap + secondDays;
  const count = countUntil(columns, terms.asOf);
  const holds: Hold[] = [];
  let start = -1;
  let inARow = 0;
  let lastHeld = -1;
  let lastLowest = -1;
  let previous = NaN;
  const close = (endedBy: HoldEnd): void => {
    if (start >= 0) holds.push(hold(columns, start, lastHeld, endedBy));
    start = -1;
    inARow = 0;
  };
  for (let index = 0; index < count;) {
    const instant = when[index] ?? NaN;
    const first = index;
    let lowest = index;
    while (++index < count && (when[index] ?? NaN) - instant < instantDays) {
      if ((level[index] ?? NaN) < (level[lowest] ?? NaN)) lowest = index;
    }
    if ((level[lowest] ?? NaN) < threshold) close({ kind: 'below', index: lowest });
    else {
      if (instant - previous > longestGap) close({ kind: 'untested', index: first, days: instant - previous });
      if (++inARow >= terms.confirm && start < 0) start = first;
      lastHeld = index - 1;
    }
    previous = instant;
    lastLowest = lowest;
  }
  const running = start < 0 ? null : hold(columns, start, lastHeld, { kind: 'running' });
  if (running !== null) holds.push(running);
  return { holds, running, lastIndex: lastLowest < 0 ? null : lastLowest, count };
}

function hold({ when }: ReadingColumns, firstIndex: number, lastIndex: number, endedBy: HoldEnd): Hold {
  return { firstIndex, lastIndex, from: when[firstIndex] ?? NaN, to: when[lastIndex] ?? NaN, endedBy };
}

/** How many readings are not after `asOf`; one in the same instant is not after it. */
function countUntil({ when, count }: ReadingColumns, asOf: number | undefined): number {
  if (asOf === undefined) return count;
  let known = 0;
  let after = count;
  while (known < after) {
    const middle = (known + after) >>> 1;
    if ((when[middle] ?? NaN) - asOf < instantDays) known = middle + 1;
    else after = middle;
  }
  return known;
}
