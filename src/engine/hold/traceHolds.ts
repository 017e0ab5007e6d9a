import type { ReadingColumns } from '../log/readingColumns.js';
import type { HoldTerms } from './holdTerms.js';
import type { HoldTrace } from './holdTrace.js';
import { HoldTracer } from './holdTracer.js';

/**
 * The holds in a series of readings.
 *
 * Definition: a hold starts at the first reading at or above the low limit (with confirm 2 at the second of two in a
 * row, at different instants) and runs until a reading below. A stretch between tests longer than the longest gap
 * starts it anew at the later reading. Readings less than half a second apart are one instant, and its lowest counts.
 *
 * @param columns readings in time order
 * @param terms what counts as a hold
 * @returns every hold in time order
 */
export function traceHolds(columns: ReadingColumns, terms: HoldTerms): HoldTrace {
  const { when, low, row, count } = columns;
  const tracer = new HoldTracer(terms);
  for (let index = 0; index < count; index++) tracer.add(when[index] ?? 0, low[index] ?? 0, row[index] ?? 0);
  return tracer.trace(columns.odd);
}
