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
  unlessBlankOrZero,
  usualHoldDays,
  usualLongestGapDays,
  zeroOrUntested,
  type HoldTerms,
  type JudgedBand,
  type Problem,
  type ReadingColumns,
  type Result,
} from '../src/index.js';
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

type HoldSettings = Omit<HoldTerms, 'low'> & { readonly band: JudgedBand; readonly days: number };

export interface HoldQuestion {
  readonly columns: ReadingColumns;
  readonly terms: HoldTerms;
  readonly band: JudgedBand;
  readonly days: number;
}

/** Reads what the hold functions share, the ranges last, and asks the question. */
export function holdQuestion<T>(
  given: HoldArguments,
  ask: (question: HoldQuestion) => Result<T, Problem>,
): Result<T, Problem> {
  const settings = callWith(
    surely((read: HoldSettings) => read),
    {
      band: bandIn(rangeOf(given.band).map((row) => row.map(cellOf))),
      days: unlessBlankOrZero(cellOf(given.days), daysIn, days(usualHoldDays)),
      asOf: unlessBlankOrZero(cellOf(given.asOf), timeIn, undefined),
      arrived: unlessBlankOrZero(cellOf(given.arrived), timeIn, undefined),
      longestGap: unlessBlankOrZero(cellOf(given.longestGap), gapIn, days(usualLongestGapDays)),
      confirm: optionally(cellOf(given.confirm), confirmIn, 1 as const),
    },
  );
  if (!settings.ok) return settings;
  const columns = readReadings({ when: rangeOf(given.when), copper: rangeOf(given.copper), cellOf });
  if (!columns.ok) return columns;
  const { band, days: wanted, ...times } = settings.value;
  const terms = { low: band.low, ...times };
  return zeroOrUntested(columns.value, band.low, (read) => ask({ columns: read, terms, band, days: wanted }));
}
