import { cautionsTable, ok, selfCheckTable } from '../src/engine/index.js';
import { tableAnswer } from './answer.js';

/**
 * Published values recalculated on the spot, each beside its source, to show whether this copy of the functions works correctly.
 * @customfunction SELFCHECK
 * @returns Table with headings: Check, Published, Computed, Agrees, Source.
 */
export function selfCheckCell(): any[][] {
  return tableAnswer(ok(selfCheckTable()));
}

/**
 * What to know before using copper, which is a poison to fish, invertebrates and people. An aquatic veterinarian decides.
 * @customfunction CAUTIONS
 * @returns Table with heading: Caution.
 */
export function cautionsCell(): any[][] {
  return tableAnswer(ok(cautionsTable()));
}
