import type { ReadingColumns } from '../log/readingColumns.js';
import type { HoldTerms } from './holdTerms.js';
import { HoldTracer } from './holdTracer.js';

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
  | { readonly kind: 'below'; readonly index: number; readonly row: number }
  | { readonly kind: 'untested'; readonly index: number; readonly row: number; readonly days: number }
  | { readonly kind: 'running' };

export interface LastTest {
  /** [serial day] */
  readonly when: number;
  /** The low end. [mg/L] */
  readonly level: number;
  readonly row: number;
}

export interface HoldTrace {
  readonly holds: readonly Hold[];
  /** The hold that the last reading belongs to. */
  readonly running: Hold | null;
  /** The lowest reading of the last instant, null where there is no reading. */
  readonly last: LastTest | null;
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
  const { when, low, row, count } = columns;
  const tracer = new HoldTracer(terms);
  for (let index = 0; index < count; index++) tracer.add(when[index] ?? 0, low[index] ?? 0, row[index] ?? 0);
  return tracer.trace();
}
