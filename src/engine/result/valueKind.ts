import type { DimensionName } from '../dimensions/dimensions.js';

/** What a value should have been, for the sentence that says what to write. */
export type ValueKind =
  | DimensionName
  | 'whole'
  | 'percent'
  | 'change'
  | 'choice'
  | 'text'
  | 'fish'
  | 'fish count'
  | 'condition'
  | 'time'
  | 'band'
  | 'form'
  | 'reading';

/** `above` excludes the limit itself, `min` and `max` include it. */
export interface Limits {
  readonly above?: number;
  readonly min?: number;
  readonly below?: number;
  readonly max?: number;
}
