import * as limits from '../limits/limits.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { copperMgPerLitre, levelTolerance, type CopperMgPerLitre, type Fraction } from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';
import { meterOf, spreadsAt95, type Meter } from './meterSpread.js';
import { normalQuantile } from './normalQuantile.js';

/** Unless the keeper says otherwise. */
export const usualAimChance = limits.shownChance.value;

/**
 * The reading to keep, so that the true level is at or above the low limit with a given chance.
 *
 * r − z·σ(r) = low, σ(r) = (accuracy + percent·r) ÷ 1.96, so r = (low + z·accuracy ÷ 1.96) ÷ (1 − z·percent ÷ 1.96)
 *
 * Basis: the true level is normal about the reading; z is the normal quantile of the chance.
 * Validity: chance from 50 % to below 100 %: under 50 % the reading kept would itself be below the limit.
 * Definition: one reading by itself; what the readings before it say is left out, see chanceNeverBelow.
 *
 * @param given band [mg/L], high Infinity for no top; the meter's accuracy [mg/L] and percent [1]; chance [1]
 * @returns the reading, or the problem where it would pass the band's top [mg/L]
 * @example readingToKeep({ band: { low: 0.18, high: 0.21 }, accuracy: 0.02, percent: 0, chance: 0.95 }) // ≈ 0.196784
 */
export function readingToKeep(
  given: Meter & { band: { readonly low: number; readonly high: number }; chance: Fraction },
): Result<CopperMgPerLitre, Problem> {
  const { band, chance } = given;
  const meter = meterOf(given);
  if (!meter.ok) return meter;
  if (chance < 0.5) {
    return refuse({
      code: 'out-of-limits',
      at: { field: 'chance' },
      given: `${shownNumber(chance * 100)}%`,
      limits: { min: 50, below: 100 },
      unit: '%',
    });
  }
  const needed = readingThatShowsLow(given, band.low, normalQuantile(chance));
  if (needed !== null && needed <= band.high + levelTolerance) return ok(copperMgPerLitre(needed));
  const high = band.high === Infinity ? null : band.high;
  return refuse({ code: 'meter-too-coarse', low: band.low, high, needed });
}

/** Null where no reading does: its error grows as fast as the reading. */
function readingThatShowsLow({ accuracy, percent }: Meter, low: number, z: number): number | null {
  const left = 1 - (z * percent) / spreadsAt95;
  return left > 0 ? (low + (z * accuracy) / spreadsAt95) / left : null;
}
