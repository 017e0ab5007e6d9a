import type { CellRange } from '../../sheet/index.js';

/** A keeper's log, found by its headings. */
export interface FoundLog {
  readonly sheet: string;
  /** The heading row first. */
  readonly range: CellRange;
  /** The systems its rows name, as first written; empty where it has no column of them. */
  readonly systems: readonly string[];
}
