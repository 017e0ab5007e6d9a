import type { ColumnKind } from '../log/headings/columnKinds.js';
import type { Problem } from '../result/problem.js';
import type { HoldAnswer } from './holdAnswer.js';

/** Readings, cells and columns as they are written. */
export type RecordFinding =
  | {
      readonly code: 'unreadable-copper';
      readonly problem: Problem;
      /** Both counts, where it lies in a hold. */
      readonly counts: { readonly ifBelow: HoldAnswer; readonly ifHeld: HoldAnswer } | null;
    }
  | { readonly code: 'unreadable-cell'; readonly kind: ColumnKind; readonly problem: Problem }
  | { readonly code: 'row-without-time'; readonly problem: Problem }
  | {
      readonly code: 'bare-zero';
      readonly ifZero: HoldAnswer;
      readonly ifUntested: HoldAnswer;
    }
  | { readonly code: 'readings-on-limit'; readonly limit: number; readonly rows: readonly number[] }
  | {
      readonly code: 'meter-cannot-show';
      readonly reason: 'limit-unread' | 'too-coarse' | 'free-test';
      readonly low: number;
      readonly top: number;
      /** The reading it would take, null: there is none. */
      readonly needed: number | null;
      readonly from: number | null;
    }
  | { readonly code: 'strength-missing' }
  | { readonly code: 'own-day-count'; readonly written: number; readonly counted: number | null; readonly rows: number }
  | {
      readonly code: 'noted-readings';
      readonly kind: 'approximate' | 'voided' | 'date only';
      readonly rows: readonly number[];
    };
