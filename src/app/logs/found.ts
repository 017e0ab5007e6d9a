import type { CellRange } from '../../sheet/index.js';

/** A keeper's log, found by its headings. */
export interface FoundLog {
  readonly sheet: string;
  /** The heading row first. */
  readonly range: CellRange;
  /** The systems its rows name, as first written; empty where it has no column of them. */
  readonly systems: readonly string[];
}

/** The card of a system: two columns of names and values, or a row of a table of cards. */
export interface FoundCard {
  readonly sheet: string;
  /** Of its cells, the names in two columns too. */
  readonly range: CellRange;
  /** The row of names above, of a table of cards; null: the names stand beside the values. */
  readonly names: CellRange | null;
  /** The system that it names. */
  readonly system: string | null;
  /** Its form is a formula: it shows what another card says. */
  readonly isCopy: boolean;
}
