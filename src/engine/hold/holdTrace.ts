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
  /** The number after a `<`, where the reading is such a bound. [mg/L] */
  readonly under: number | null;
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
