import type { ReadingColumns } from '../log/readingColumns.js';
import { readReadings, readingsInto, type ReadingRanges } from '../log/readReadings.js';
import type { Problem } from '../result/problem.js';
import type { Result } from '../result/result.js';
import type { JudgedBand } from './holdRows.js';
import type { HoldTerms } from './holdTerms.js';
import { HoldTracer, traceHolds } from './holdTracer.js';
import type { HoldTrace } from './holdTrace.js';
import { zeroOrUntested } from './zeroOrUntested.js';

/** A question about the hold in two ranges of cells, which are read last: a fault of another argument comes first. */
export interface HoldQuestion {
  readonly ranges: ReadingRanges;
  readonly terms: HoldTerms;
  readonly band: JudgedBand;
  /** Unbroken days wanted. */
  readonly days: number;
}

/**
 * The answer to a question about the holds alone. Rows in time order are traced as they are read; others, and those with
 * a doubtful 0, are put into columns first.
 *
 * Definition: `ask` of the trace of the readings, unless zeroOrUntested has a row to fix.
 *
 * @param question ranges, terms, and the days wanted
 * @param ask such as holdDays
 * @returns the answer, or why there is none
 */
export function traceAnswer<T>(
  { ranges, terms, days }: HoldQuestion,
  ask: (trace: HoldTrace, terms: HoldTerms, days: number) => Result<T, Problem>,
): Result<T, Problem> {
  const tracer = new HoldTracer(terms);
  const marks = readingsInto(tracer, ranges);
  if (!marks.ok) return marks;
  const { odd, zeroRows, hasBlanks } = marks.value;
  if (tracer.inOrder && (hasBlanks || zeroRows.length === 0)) return ask(tracer.trace(odd), terms, days);
  const columns = readReadings(ranges);
  if (!columns.ok) return columns;
  return zeroOrUntested(columns.value, terms.low, (readings) => ask(traceHolds(readings, terms), terms, days));
}

/**
 * The answer to a question about the readings themselves.
 *
 * Definition: `ask` of the readings in time order, unless zeroOrUntested has a row to fix.
 *
 * @param question ranges, terms and band
 * @param ask such as holdRows
 * @returns the answer, or why there is none
 */
export function readingsAnswer<T>(
  { ranges, terms, band }: HoldQuestion,
  ask: (columns: ReadingColumns, terms: HoldTerms, band: JudgedBand) => Result<T, Problem>,
): Result<T, Problem> {
  const columns = readReadings(ranges);
  if (!columns.ok) return columns;
  return zeroOrUntested(columns.value, terms.low, (readings) => ask(readings, terms, band));
}
