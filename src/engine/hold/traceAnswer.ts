import { readReadings, readingsInto, type ReadingRanges } from '../log/readReadings.js';
import type { Problem } from '../result/problem.js';
import type { Result } from '../result/result.js';
import type { HoldTerms } from './holdTerms.js';
import { HoldTracer } from './holdTracer.js';
import type { HoldTrace } from './holdTrace.js';
import { traceHolds } from './traceHolds.js';
import { zeroOrUntested } from './zeroOrUntested.js';

/**
 * The answer to a question about the holds in two ranges. Rows in time order are traced as they are read; others, and
 * those with a doubtful 0, are put into columns first.
 *
 * Definition: `answer` of the trace of the readings, unless zeroOrUntested has a row to mend.
 *
 * @param ranges times and readings
 * @param terms what counts as a hold
 * @param answer the question
 * @returns the answer, or why there is none
 */
export function traceAnswer<T>(
  ranges: ReadingRanges,
  terms: HoldTerms,
  answer: (trace: HoldTrace) => Result<T, Problem>,
): Result<T, Problem> {
  const tracer = new HoldTracer(terms);
  const marks = readingsInto(tracer, ranges);
  if (!marks.ok) return marks;
  const { odd, zeroRows, hasBlanks } = marks.value;
  if (tracer.inOrder && (hasBlanks || zeroRows.length === 0)) return answer(tracer.trace(odd));
  const columns = readReadings(ranges);
  if (!columns.ok) return columns;
  return zeroOrUntested(columns.value, terms.low, (read) => answer(traceHolds(read, terms)));
}
