import type { FormName } from '../dose/forms.js';

/** How a number came to be another one. */
export type SlipCause =
  /** µg/L written in a column of mg/L, or the other way round. */
  | 'micrograms'
  | 'milligrams'
  /** Written without its decimal point: 225 for 2.25. */
  | 'point lost'
  /** The point a place or two too far to the right or to the left. */
  | 'point moved'
  | 'digits swapped';

/** What the next reading says about two doses given close together. */
export type TwiceVerdict = 'dosed twice' | 'written twice' | 'cannot tell' | 'no reading';

/** A reading that a later one is compared with. */
interface ComparedReading {
  readonly row: number;
  /** [mg/L] */
  readonly level: number;
}

/** Slips of the pen, doses, and water that does not behave. Levels in mg/L, doses in mL, times in hours. */
export type SlipFinding =
  | {
      readonly code: 'unit-slip';
      readonly cause: SlipCause;
      readonly written: number;
      readonly meant: number;
      readonly expected: number;
      readonly dosed: boolean;
    }
  | {
      readonly code: 'swapped-rows';
      readonly written: number;
      readonly expected: number;
      readonly other: ComparedReading;
      readonly dosed: boolean;
    }
  | {
      readonly code: 'swapped-systems';
      readonly written: number;
      readonly expected: number;
      readonly fits: FormName;
      readonly dosed: boolean;
    }
  | {
      readonly code: 'double-dose';
      readonly first: { readonly row: number; readonly dose: number };
      readonly dose: number;
      readonly hours: number;
      readonly verdict: TwiceVerdict;
      /** The next reading and what it should be with the later dose and without; null: none, or no model. */
      readonly next: (ComparedReading & { readonly withBoth: number; readonly withOne: number }) | null;
    }
  | {
      readonly code: 'wrong-form';
      readonly side: 'above' | 'below';
      readonly levels: readonly number[];
      /** Three times the top, or a third of the low. */
      readonly limit: number;
      readonly fits: FormName | null;
    }
  | {
      readonly code: 'unmatched-change';
      readonly litres: number;
      readonly before: number;
      readonly after: number;
      readonly low: number;
      /** The row says matched or premixed, and the next reading does not agree. */
      readonly saysMatched: boolean;
      /** A reading that shows the new water to have been at the tank's level after all. */
      readonly shownMatched: ComparedReading | null;
    }
  | {
      readonly code: 'unexplained-reading';
      readonly written: number;
      readonly expected: number;
      readonly low: number;
      readonly high: number;
      /** The readings after it agree with it, or with the ones before it. */
      readonly then: 'stays' | 'goes back' | 'last';
      /** Further readings of the log that the model cannot explain. */
      readonly further: readonly number[];
    }
  | { readonly code: 'absorber'; readonly word: string; readonly lossPerDay: number; readonly usual: number }
  | {
      readonly code: 'dose-untested';
      readonly dose: number;
      /** Since the last test; null: there is none before. */
      readonly hours: number | null;
      /** An earlier dose that no test followed; null: only the test is old. */
      readonly after: { readonly row: number; readonly hours: number } | null;
      readonly further: readonly number[];
    }
  | { readonly code: 'copper-in-top-off'; readonly words: string | null; readonly level: number | null };
