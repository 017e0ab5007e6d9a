import * as limits from '../limits/limits.js';
import { instantDays, levelTolerance } from '../units/quantity.js';
import type { Card } from '../log/card.js';
import { meterAccuracyOf } from './meterError.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { levelText, rowsText, capital, cardinal } from './phrases.js';
import type { Treatment } from './treatment.js';

interface ReadingsOnLimit {
  readonly code: 'readings-on-limit';
  readonly limit: number;
  readonly rows: readonly number[];
}

/**
 * Three readings in a row exactly at the low limit: a warning, once. A meter's error spreads readings; these may be
 * wishes. Of a form with an allowance the limit without it counts too, unless it is what the keeper aims at.
 */
export const readingsOnLimit: Rule<ReadingsOnLimit> = {
  about: `${cardinal(limits.readingsOnLimit.value)} readings in a row exactly at the low limit`,
  codes: { 'readings-on-limit': ['warning'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu', 2.25, 1.95, 1.95, 1.95), finds: ['warning 5 readings-on-limit'] },
    { log: daily('Cu', 2.25, 1.95, 1.95, 1.96, 1.95), finds: [] },
  ],
};

function find({ readings, card }: Treatment): readonly Found<ReadingsOnLimit>[] {
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
}

function words({ limit, rows }: ReadingsOnLimit): FindingWords {
  const count = cardinal(limits.readingsOnLimit.value);
  return {
    finding: `${capital(count)} readings in a row, ${rowsText(rows)}, are exactly ${levelText(limit)}, the low limit: read the meter again and write what it shows.`,
    why: `A meter’s error scatters readings; ${count} in a row on the limit are seldom what it showed.`,
  };
}

function lowLimits(card: Card): readonly number[] {
  const { low, inner } = card.band;
  const isAim = inner === undefined || card.aim - inner.low < meterAccuracyOf(card);
  return isAim || inner.low === low ? [low] : [low, inner.low];
}
