import type { ReferenceKey } from '../references/references.js';
import type { Limits, ValueKind } from './valueKind.js';

export type { Limits, ValueKind } from './valueKind.js';

/** Where a fault lies: an argument by its name in the contract, or the n-th row of the range given. */
export type Place = { readonly field: string } | { readonly row: number };

/**
 * Why there is no answer. A code is never renamed or reused; src/engine/text/message.ts puts each into a sentence.
 * `given` is the cell as `shown` repeats it.
 */
export type Problem =
  // One value
  | { readonly code: 'blank'; readonly at: Place; readonly kind: ValueKind }
  | { readonly code: 'blank-level'; readonly field: string }
  | { readonly code: 'zero-level'; readonly field: string }
  | { readonly code: 'error-cell'; readonly at: Place; readonly given: string }
  | { readonly code: 'many-cells'; readonly field: string; readonly cells: number }
  | { readonly code: 'not-a-value'; readonly at: Place; readonly given: string; readonly kind: ValueKind }
  | { readonly code: 'unknown-unit'; readonly at: Place; readonly given: string; readonly known: string }
  | { readonly code: 'three-digits-after-comma'; readonly at: Place; readonly given: string }
  | {
      readonly code: 'out-of-limits';
      readonly at: Place;
      readonly given: string;
      readonly limits: Limits;
      readonly unit: string;
    }
  | { readonly code: 'not-whole'; readonly field: string; readonly given: string }
  | {
      readonly code: 'not-a-choice';
      readonly field: string;
      readonly given: string;
      readonly choices: readonly string[];
    }
  | { readonly code: 'share-of-volume'; readonly field: string; readonly given: string }
  | { readonly code: 'share-without-volume'; readonly field: string; readonly given: string }
  // Readings and times
  | { readonly code: 'not-a-reading'; readonly at: Place; readonly given: string }
  | { readonly code: 'reading-too-high'; readonly at: Place; readonly given: string; readonly bare: boolean }
  | { readonly code: 'reading-negative'; readonly at: Place; readonly given: string }
  | { readonly code: 'bound-not-a-level'; readonly field: string; readonly given: string }
  | { readonly code: 'not-a-time'; readonly at: Place; readonly given: string }
  | { readonly code: 'time-with-zone'; readonly at: Place; readonly given: string }
  | { readonly code: 'time-without-date'; readonly at: Place; readonly given: string }
  | { readonly code: 'not-a-time-of-day'; readonly at: Place; readonly given: string }
  | { readonly code: 'two-times-of-day'; readonly row: number; readonly given: string }
  | { readonly code: 'reading-without-time'; readonly row: number; readonly given: string }
  | { readonly code: 'text-without-time'; readonly row: number; readonly given: string }
  | { readonly code: 'zero-or-untested'; readonly row: number }
  // Ranges and bands
  | { readonly code: 'not-a-line'; readonly field: string; readonly rows: number; readonly columns: number }
  | {
      readonly code: 'unequal-ranges';
      readonly first: string;
      readonly firstCells: number;
      readonly second: string;
      readonly secondCells: number;
    }
  | { readonly code: 'not-a-form'; readonly field: string; readonly given: string }
  | { readonly code: 'form-unclear'; readonly field: string; readonly given: string }
  | { readonly code: 'band-upside-down'; readonly low: string; readonly high: string }
  | { readonly code: 'band-cells'; readonly rows: number; readonly columns: number }
  // Water and dose
  | { readonly code: 'no-water-left'; readonly litres: number }
  | {
      readonly code: 'more-than';
      readonly field: string;
      readonly given: string;
      readonly limitField: string;
      readonly limit: string;
      readonly unit: string;
    }
  | {
      readonly code: 'not-below';
      readonly field: string;
      readonly given: string;
      readonly limitField: string;
      readonly limit: string;
      readonly unit: string;
    }
  | { readonly code: 'rise-too-small'; readonly rise: number; readonly needed: number }
  | { readonly code: 'strength-unlikely'; readonly strength: number }
  | { readonly code: 'lowering-by-dose'; readonly wanted: number; readonly level: number }
  | {
      readonly code: 'above-band';
      readonly wanted: number;
      readonly band: string;
      readonly low: number;
      readonly high: number;
    }
  | { readonly code: 'raising-by-change'; readonly wanted: number; readonly level: number }
  | { readonly code: 'not-above-replacement'; readonly wanted: number; readonly replacement: number }
  | { readonly code: 'dose-step-zero'; readonly total: number; readonly doses: number; readonly smallest: number }
  | { readonly code: 'doses-past-a-day'; readonly doses: number; readonly hoursBetween: number }
  // The loss of copper
  | { readonly code: 'not-one-level'; readonly row: number; readonly given: string }
  | { readonly code: 'rise-not-below-reading'; readonly row: number; readonly rise: number; readonly level: number }
  | { readonly code: 'rise-without-time'; readonly row: number; readonly given: string }
  | { readonly code: 'readings-too-close'; readonly hours: number }
  // The hold
  | { readonly code: 'no-reading' }
  | {
      readonly code: 'no-hold';
      readonly level: string;
      readonly when: string;
      readonly row: number;
      readonly low: number;
      readonly confirming: boolean;
    }
  // The meter
  | { readonly code: 'meter-without-error' }
  | {
      readonly code: 'meter-too-coarse';
      readonly low: number;
      readonly high: number | null;
      readonly needed: number | null;
    }
  // Formulas with a stated range
  | {
      readonly code: 'outside-validity';
      readonly field: string;
      readonly given: number;
      readonly min: number;
      readonly max: number;
      readonly unit: string;
      readonly source: ReferenceKey;
    }
  // The whole log
  | { readonly code: 'missing-heading'; readonly kind: string }
  | { readonly code: 'two-headings'; readonly kind: string; readonly first: string; readonly second: string }
  | {
      readonly code: 'heading-unit';
      readonly heading: string;
      readonly kind: string;
      readonly unit: string;
      readonly known: string;
    }
  | { readonly code: 'row-without-time'; readonly row: number }
  | { readonly code: 'several-systems'; readonly systems: readonly string[] }
  | { readonly code: 'card-shape'; readonly rows: number; readonly columns: number }
  | { readonly code: 'card-twice'; readonly name: string; readonly first: string; readonly second: string }
  | { readonly code: 'card-without'; readonly card: string; readonly name: string }
  | { readonly code: 'log-without-rows' }
  // The answer itself
  | { readonly code: 'answer-too-large' }
  | { readonly code: 'table-too-large'; readonly rows: number };
