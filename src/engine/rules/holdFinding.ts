import type { HoldAnswer } from './holdAnswer.js';

/** The answer to the question whether the hold was long enough. Days in days, levels in mg/L, times in hours. */
type VerdictFinding =
  | {
      readonly code: 'verdict';
      readonly answer: HoldAnswer;
      readonly wanted: number;
      /** Whether the log has a reading at all. */
      readonly tested: boolean;
      /** What leaves the answer open: the lowest row, and the answer with every such cell counted either way. */
      readonly open: { readonly row: number; readonly ifBelow: HoldAnswer; readonly ifHeld: HoldAnswer } | null;
    }
  | {
      readonly code: 'verdict-days';
      readonly kind: HoldAnswer['kind'];
      readonly days: number;
      /** Of the longest hold. */
      readonly longest: number;
      readonly wanted: number;
      /** Of the hold that was long enough, else of the running one, else of the longest; null: there is none. [serial day] */
      readonly from: number | null;
      readonly to: number | null;
      /** The days go so far past the last test. */
      readonly credited: number;
    }
  | {
      readonly code: 'verdict-breaks';
      readonly rows: readonly number[];
      readonly lost: number;
    }
  | {
      readonly code: 'verdict-untested';
      readonly stretches: number;
      readonly longest: number;
      readonly restarts: number;
      readonly lost: number;
    };

/** The hold: its breaks, the level between tests, its end, stretches without a test. */
export type HoldFinding =
  | VerdictFinding
  | {
      readonly code: 'hold-broken';
      readonly level: number;
      /** The reading was a bound, below `level`. */
      readonly isBound: boolean;
      readonly low: number;
      /** Days lost. */
      readonly days: number;
      readonly from: number;
      /** When the count starts again, null: not yet. [serial day] */
      readonly again: number | null;
      /** The reading is below by less than the meter's error. */
      readonly withinError: boolean;
      /** The reading is named as a slip as well. */
      readonly slip: boolean;
    }
  | {
      readonly code: 'level-below-between';
      readonly low: number;
      readonly expected: number;
      /** Upper end of the 95 % band. */
      readonly high: number;
      readonly fromRow: number;
      readonly toRow: number;
    }
  | {
      readonly code: 'stopped-short';
      readonly days: number;
      readonly wanted: number;
      /** The row says so, or the level shows it. */
      readonly said: boolean;
      readonly level: number | null;
    }
  | { readonly code: 'moved-early'; readonly days: number; readonly fewest: number; readonly fish: string }
  | {
      readonly code: 'moved-against-terms';
      readonly days: number;
      readonly wanted: number;
      /** The longest stretch without a test where it is too long; null: none is. */
      readonly untested: number | null;
      /** A sign in the last days; null: none. [days before] */
      readonly signs: number | null;
    }
  | {
      readonly code: 'above-band';
      readonly level: number;
      readonly top: number;
      /** Percent over the top. */
      readonly over: number;
      readonly reason: 'once' | 'far' | 'twice' | 'signs' | 'top unknown';
    }
  | { readonly code: 'untested-stretch'; readonly hours: number; readonly open: boolean }
  | {
      readonly code: 'untested-noted';
      /** Of the tests that ended them. */
      readonly rows: readonly number[];
      readonly longest: number;
      /** The row since which nothing was tested, where the last one has not ended. */
      readonly openSince: number | null;
    }
  | {
      readonly code: 'restarted-untested';
      readonly hours: number;
      readonly longestGap: number;
      readonly days: number;
    }
  | { readonly code: 'newcomer'; readonly fish: string; readonly day: number; readonly restart: boolean }
  | { readonly code: 'raised-too-fast'; readonly hours: number; readonly from: number; readonly level: number }
  | {
      readonly code: 'dose-too-large';
      readonly dose: number;
      readonly rise: number;
      readonly most: number;
      readonly urgent: boolean;
    };
