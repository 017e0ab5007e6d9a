import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { fraction, levelTolerance, type CopperMgPerLitre } from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';
import { spreadsAt95, type Meter } from './meterSpread.js';
import { normalQuantile } from './normalQuantile.js';
import { readingToKeep, usualAimChance } from './readingToKeep.js';

/** Whether a meter can show a limit: from or up to which reading it does, or why none does. */
export type LimitShown =
  | { readonly kind: 'shown'; readonly reading: number }
  /** The limit itself is outside what the meter reads. */
  | { readonly kind: 'limit-unread' }
  /** The reading it takes is outside the band (null: there is none), or outside what the meter reads. */
  | { readonly kind: 'outside-band'; readonly reading: number | null }
  | { readonly kind: 'outside-range'; readonly reading: number };

export interface MeterFit {
  readonly band: { readonly low: number; readonly high: number };
  readonly readsFrom: number;
  readonly readsTo: number;
  readonly low: LimitShown;
  /** Null where the band has no top. */
  readonly top: LimitShown | null;
}

/**
 * Whether a meter can show that the level is within a band.
 *
 * The low limit is shown by readings from (low + z·accuracy ÷ 1.96) ÷ (1 − z·percent ÷ 1.96), the top by readings up to
 * (top − z·accuracy ÷ 1.96) ÷ (1 + z·percent ÷ 1.96), z the 95 % quantile.
 *
 * Basis: a limit can be shown where the meter reads the limit itself and that reading lies in the band and in the
 *   meter's range, ends included.
 * Definition: see readingToKeep; the same for the top.
 *
 * @param given band [mg/L], high Infinity for no top; the levels the meter reads from and to [mg/L]; its accuracy [mg/L]
 *   and percent [1]
 * @returns for each limit the reading that shows it [mg/L], or why none does
 * @example meterFit({ band: { low: 2, high: 3 }, readsFrom: 0, readsTo: 5, accuracy: 0.1, percent: 0 }).value.low.reading // ≈ 2.083921
 */
export function meterFit(
  given: Meter & {
    band: { readonly low: number; readonly high: number };
    readsFrom: CopperMgPerLitre;
    readsTo: CopperMgPerLitre;
  },
): Result<MeterFit, Problem> {
  const { band, readsFrom, readsTo, accuracy, percent } = given;
  if (readsFrom > readsTo) {
    return refuse({
      code: 'more-than',
      field: 'reads from',
      given: shownNumber(readsFrom),
      limitField: 'reads to',
      limit: shownNumber(readsTo),
      unit: 'mg/L',
    });
  }
  const keep = readingToKeep({ band, accuracy, percent, chance: fraction(usualAimChance) });
  const problem = keep.ok ? null : keep.problem;
  if (problem !== null && problem.code !== 'meter-too-coarse') return refuse(problem);
  const forLow = keep.ok ? keep.value : (problem?.needed ?? null);
  const low = limitShown(given, { limit: band.low, reading: forLow });
  const forTop = readingThatShowsTop(given, band.high);
  const top = band.high === Infinity ? null : limitShown(given, { limit: band.high, reading: forTop });
  return ok({ band, readsFrom, readsTo, low, top });
}

function limitShown(
  meter: { band: { readonly low: number; readonly high: number }; readsFrom: number; readsTo: number },
  { limit, reading }: { limit: number; reading: number | null },
): LimitShown {
  const { band, readsFrom, readsTo } = meter;
  if (!isWithin(limit, readsFrom, readsTo)) return { kind: 'limit-unread' };
  if (reading === null || !isWithin(reading, band.low, band.high)) return { kind: 'outside-band', reading };
  return isWithin(reading, readsFrom, readsTo) ? { kind: 'shown', reading } : { kind: 'outside-range', reading };
}

function isWithin(x: number, from: number, to: number): boolean {
  return x >= from - levelTolerance && x <= to + levelTolerance;
}

function readingThatShowsTop({ accuracy, percent }: Meter, top: number): number {
  const z = normalQuantile(usualAimChance);
  return (top - (z * accuracy) / spreadsAt95) / (1 + (z * percent) / spreadsAt95);
}
