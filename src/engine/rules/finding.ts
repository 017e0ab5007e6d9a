import type { ReferenceKey } from '../references/references.js';
import type { FishAndWaterFinding } from './fishAndWaterFinding.js';
import type { HoldFinding } from './holdFinding.js';
import type { RecordFinding } from './recordFinding.js';
import type { SlipFinding } from './slipFinding.js';

export type Severity = 'verdict' | 'danger' | 'warning' | 'note';

/** Where a finding stands and where its rule comes from. */
export interface FindingAt {
  readonly severity: Severity;
  /** null: not of one moment. [serial day] */
  readonly when: number | null;
  /** The n-th row of the log's range; null: not of one row. */
  readonly row: number | null;
  readonly source: ReferenceKey;
}

/** What was found, with the numbers that its sentence needs. src/engine/text/findings puts each code into words. */
export type FindingBody = HoldFinding | SlipFinding | RecordFinding | FishAndWaterFinding;

export type Finding = FindingAt & FindingBody;
