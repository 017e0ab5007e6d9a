import type { Hold } from './holdTrace.js';

/**
 * When the days of a fish in a hold begin: an arrival later than the hold's start replaces it.
 *
 * Definition: the later of the two.
 *
 * @param hold the hold
 * @param arrived when the fish came in, if it is known [serial day]
 * @returns [serial day]
 */
export function heldFrom(hold: Hold, arrived: number | undefined): number {
  return arrived !== undefined && arrived > hold.from ? arrived : hold.from;
}

/**
 * The days of a fish in a hold, from its start or the arrival to the hold's last reading.
 *
 * Definition: elapsed days, never negative.
 *
 * @param hold the hold
 * @param arrived when the fish came in, if it is known [serial day]
 * @returns [days]
 */
export function heldDays(hold: Hold, arrived: number | undefined): number {
  return Math.max(0, hold.to - heldFrom(hold, arrived));
}
