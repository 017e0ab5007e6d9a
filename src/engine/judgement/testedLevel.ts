import * as limits from '../limits/limits.js';
import { meterErrorAt } from '../rules/meterError.js';
import { levelTolerance } from '../units/quantity.js';
import { forecast } from './forecast.js';
import type { State } from './state.js';

/** Whether the last test says what the level is: recent, believed, one level, no water changed since. */
export function isComputable({ last, isOld, believed, card: { band } }: State): boolean {
  if (last === null || isOld || last.changedAt !== null || (believed?.doubt ?? null) !== null) return false;
  if (last.low < band.low - levelTolerance) return last.high < band.low || last.high === last.low;
  return last.high !== Infinity || band.high === Infinity || last.low > band.high;
}

/** A dose of more than 5 % of the aim, or one that comes near the top, is tested before the next. */
export function isTestPending(state: State): boolean {
  const { last, card } = state;
  if (last === null || last.dosedAt === null) return false;
  const isNearTop = levelNow(state) + meterErrorAt(card, card.aim) > card.band.high;
  return !(last.dosed <= limits.testAfterDose.value * card.aim + levelTolerance) || isNearTop;
}

/** The higher of what is believed now and what the last test leaves with what was dosed since. [mg/L] */
export function levelNow({ last, believed, card, now }: State): number {
  const tested =
    last === null ? 0 : last.high * Math.exp(-(believed?.rate ?? 0) * (now - last.when)) + (last.dosed || 0);
  return Math.max(tested, believed === null ? 0 : forecast(believed, card, now).expected);
}
