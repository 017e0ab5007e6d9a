import type { ClauseReading } from './clauseReading.js';
import type { Clause } from './clauses.js';

/** A clause as it reads beside the ones around it. */
export interface ReadClause {
  readonly clause: Clause;
  readonly reading: ClauseReading;
  /** A sign that a clause about now has overtaken. */
  readonly over?: boolean;
}
