import type { AmmoniaBasis } from '../ammonia/freeAmmonia.js';
import type { ToleranceReason } from '../fish/toleranceEntry.js';

/** What the fish and the water say. Times in serial days, ammonia in mg/L, salinity in g/kg. */
export type FishAndWaterFinding =
  | { readonly code: 'conditioner-noted'; readonly words: string }
  | { readonly code: 'low-salinity'; readonly salinity: number; readonly limit: number; readonly ofCard: boolean }
  | { readonly code: 'low-salinity-treatment'; readonly words: string }
  | {
      readonly code: 'copper-intolerant-fish';
      /** As the keeper wrote it. */
      readonly fish: string;
      /** The entry of the list that it is read as. */
      readonly listedAs: string;
      readonly advice: 'never' | 'avoid';
      readonly reason: ToleranceReason;
    }
  | {
      readonly code: 'deaths';
      readonly count: number;
      readonly hours: number;
      /** '' where the log has no lots. */
      readonly lot: string;
      /** They were of so many lots. */
      readonly lots: number;
      /** How many of the lot were alive in the system at arrival; null: not known. */
      readonly of: number | null;
    }
  | { readonly code: 'death-noted'; readonly count: number; readonly onArrival: number; readonly lot: string }
  | { readonly code: 'first-signs'; readonly text: string }
  | {
      readonly code: 'second-signs';
      readonly text: string;
      readonly first: { readonly row: number; readonly when: number } | null;
    }
  | {
      readonly code: 'unionised-ammonia';
      readonly free: number;
      /** As written; null: the column itself is of un-ionised ammonia. */
      readonly total: { readonly written: number; readonly as: AmmoniaBasis } | null;
      readonly limit: number;
    }
  | {
      readonly code: 'ammonia-outside-range';
      readonly total: number;
      readonly field: string;
      readonly given: number;
      readonly min: number;
      readonly max: number;
    }
  | { readonly code: 'ammonia-not-judged'; readonly total: number; readonly missing: readonly string[] }
  /** null: a liquid test is noted, no number is written. */
  | { readonly code: 'liquid-ammonia-test'; readonly total: number | null };
