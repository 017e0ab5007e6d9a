import { references, type ReferenceKey } from '../references/references.js';

/** What limits are about, in the order of their table. */
export const limitTopics = [
  'hold',
  'move',
  'above',
  'raise',
  'now',
  'after',
  'flukes',
  'fish',
  'water',
  'meter',
  'record',
  'odds',
  'change',
] as const;

type LimitUnit =
  | 'days'
  | 'h'
  | 'min'
  | 'mg/L'
  | 'mg NH3/L'
  | 'g/kg'
  | 'mL'
  | 'L'
  | '°C'
  | 'of the low limit'
  | 'of the top'
  | 'of the aim'
  | 'parts of the aim'
  | 'of the level'
  | 'of the volume'
  | 'of the lot'
  | 'of the tests'
  | 'of the dose'
  | 'of the fall'
  | 'a day'
  | 'of the error'
  | 'of the expected'
  | 'fish'
  | 'readings'
  | 'doses'
  | 'tests'
  | 'changes'
  | 'top-offs'
  | 'SD'
  | '−2·ln of a ratio'
  | 'chance';

/** A number at which an answer changes. Without a source it is common practice. */
export interface Limit {
  readonly of: (typeof limitTopics)[number];
  readonly value: number;
  readonly unit: LimitUnit;
  /** What it decides, in a few words. */
  readonly decides: string;
  readonly source?: ReferenceKey;
}

/** How far a limit is known: published, derived from something published, common practice, or memory. */
export function limitStatus({ source = 'Practice' }: Limit): 'published' | 'derived' | 'practice' | 'memory' {
  const { status } = references[source];
  return status === 'seen' || status === 'copy' ? 'published' : status;
}
