import {
  argumentsIn,
  bandIn,
  confirmIn,
  days,
  daysIn,
  gapIn,
  ok,
  timeIn,
  unlessBlankOrZero,
  usualHoldDays,
  usualLongestGapDays,
  type HoldQuestion,
  type Problem,
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
  readonly arrived?: unknown;
  readonly longestGap?: unknown;
  readonly confirm?: unknown;
}

/** Reads what the hold functions share; the two ranges themselves are left for the answer. */
export function holdQuestion(given: HoldArguments): Result<HoldQuestion, Problem> {
  const settings = argumentsIn({
    band: bandIn(rangeOf(given.band).map((row) => row.map(cellOf))),
    days: unlessBlankOrZero(cellOf(given.days), daysIn, days(usualHoldDays)),
    asOf: unlessBlankOrZero(cellOf(given.asOf), timeIn, undefined),
    arrived: unlessBlankOrZero(cellOf(given.arrived), timeIn, undefined),
    longestGap: unlessBlankOrZero(cellOf(given.longestGap), gapIn, days(usualLongestGapDays)),
    confirm: unlessBlankOrZero(cellOf(given.confirm), confirmIn, 1 as const),
  });
  if (!settings.ok) return settings;
  const { band, days: wanted, ...times } = settings.value;
  return ok({
    ranges: { when: rangeOf(given.when), copper: rangeOf(given.copper), cellOf },
    terms: { low: band.low, ...times },
    band,
    days: wanted,
  });
}
