import { limits } from '../limits/limits.js';
import { instantDays, levelTolerance } from '../units/quantity.js';
import type { Card } from '../log/card.js';
import type { Rule } from './rule.js';
import { meterAccuracyOf } from './treatmentOf.js';

/**
 * Three readings in a row exactly at the low limit: a warning, once. A meter's error spreads readings; these may be
 * wishes. Of a form with an allowance the limit without it counts too, unless it is what the keeper aims at.
 */
export const readingsOnLimit: Rule = ({ readings, card }) => {
  const { count, when, low, row, odd } = readings;
  const lows = lowLimits(card);
  let streak: number[] = [];
  let limit = NaN;
  let previous = NaN;
  for (let index = 0; index < count; index++) {
    const level = low[index] ?? NaN;
    const at = lows.find((each) => Math.abs(level - each) < levelTolerance);
    const isExact = at !== undefined && (odd.size === 0 || !odd.has(row[index] ?? 0));
    if (!isExact) streak = [];
    else if (at !== limit || streak.length === 0) streak = [index];
    else if ((when[index] ?? NaN) - previous >= instantDays) streak.push(index);
    limit = at ?? NaN;
    previous = when[index] ?? NaN;
    if (streak.length < limits.readingsOnLimit.value) continue;
    const rows = streak.map((each) => row[each] ?? 0);
    const found = { when: previous, row: row[index] ?? 0, source: 'Practice', limit, rows } as const;
    return [{ ...found, code: 'readings-on-limit', severity: 'warning' }];
  }
  return [];
};

function lowLimits(card: Card): readonly number[] {
  const { low, inner } = card.band;
  const isAim = inner === undefined || card.aim - inner.low < meterAccuracyOf(card);
  return isAim || inner.low === low ? [low] : [low, inner.low];
}
