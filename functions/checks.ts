import { cautionsTable, ok, selfCheckTable } from '../src/engine/index.js';
import { tableAnswer } from './answer.js';

/**
 * Published values recomputed in place, each beside its source: whether this copy of the functions computes as it should.
 * @customfunction SELFCHECK
 * @returns Table with headings: Check, Published, Computed, Agrees, Source.
 */
export function selfCheckCell(): any[][] {
  return tableAnswer(ok(selfCheckTable()));
}

/**
 * What must be known before copper is used: a poison to fish, invertebrates and people. An aquatic veterinarian decides.
 * @customfunction CAUTIONS
 * @returns Table with heading: Caution.
 */
export function cautionsCell(): any[][] {
  return tableAnswer(ok(cautionsTable()));
}
