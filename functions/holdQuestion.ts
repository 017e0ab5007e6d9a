import {
  bandIn,
  callWith,
  confirmIn,
  days,
  daysIn,
  gapIn,
  optionally,
  readReadings,
  surely,
  timeIn,
  traceAnswer,
  unlessBlankOrZero,
  usualHoldDays,
  usualLongestGapDays,
  zeroOrUntested,
  type HoldTerms,
  type HoldTrace,
  type JudgedBand,
  type Problem,
  type ReadingColumns,
  type Result,
} from '../src/engine/index.js';
import { cellOf } from './cellOf.js';
import { rangeOf } from './rangeOf.js';

interface HoldArguments {
  readonly when: unknown;
  readonly copper: unknown;
  readonly band: unknown;
  readonly asOf?: unknown;
  readonly days?: unknown;
  readonly arrived: unknown;
  readonly longestGap: unknown;
  readonly confirm: unknown;
}

/** A question about the readings themselves. */
export interface ColumnsQuestion {
  readonly columns: ReadingColumns;
  readonly terms: HoldTerms;
  readonly band: JudgedBand;
}

/** A question about the holds alone. */
export interface TraceQuestion {
  readonly trace: HoldTrace;
  readonly terms: HoldTerms;
  readonly days: number;
}

/** Reads what the hold functions share, the ranges last, and asks about the readings. */
export function columnsAnswer<T>(
  given: HoldArguments,
  ask: (question: ColumnsQuestion) => Result<T, Problem>,
): Result<T, Problem> {
  const read = holdSettings(given);
  if (!read.ok) return read;
  const columns = readReadings(readingRanges(given));
  if (!columns.ok) return columns;
  const { band, terms } = read.value;
  return zeroOrUntested(columns.value, band.low, (readings) => ask({ columns: readings, terms, band }));
}

/** Reads what the hold functions share, the ranges last, and asks about the holds. */
export function traceAnswerOf<T>(
  given: HoldArguments,
  ask: (question: TraceQuestion) => Result<T, Problem>,
): Result<T, Problem> {
  const read = holdSettings(given);
  if (!read.ok) return read;
  const { terms, days: wanted } = read.value;
  return traceAnswer(readingRanges(given), terms, (trace) => ask({ trace, terms, days: wanted }));
}

function readingRanges({ when, copper }: HoldArguments) {
  return { when: rangeOf(when), copper: rangeOf(copper), cellOf };
}

interface HoldSettings {
  readonly band: JudgedBand;
  readonly days: number;
  readonly terms: HoldTerms;
}

type ReadSettings = Omit<HoldTerms, 'low'> & { readonly band: JudgedBand; readonly days: number };

function holdSettings(given: HoldArguments): Result<HoldSettings, Problem> {
  return callWith(
    surely(({ band, days: wanted, ...times }: ReadSettings) => ({
      band,
      days: wanted,
      terms: { low: band.low, ...times },
    })),
    {
      band: bandIn(rangeOf(given.band).map((row) => row.map(cellOf))),
      days: unlessBlankOrZero(cellOf(given.days), daysIn, days(usualHoldDays)),
      asOf: unlessBlankOrZero(cellOf(given.asOf), timeIn, undefined),
      arrived: unlessBlankOrZero(cellOf(given.arrived), timeIn, undefined),
      longestGap: unlessBlankOrZero(cellOf(given.longestGap), gapIn, days(usualLongestGapDays)),
      confirm: optionally(cellOf(given.confirm), confirmIn, 1 as const),
    },
  );
}
