import { runningHold } from '../hold/runningHold.js';
import type { Hold } from '../hold/holdTrace.js';
import { traceHolds } from '../hold/holdTracer.js';
import type { ReadingColumns } from '../log/readingColumns.js';
import type { Problem } from '../result/problem.js';
import { ok, type Result } from '../result/result.js';
import { copperPerRootDay, fraction, instantDays, type Fraction } from '../units/quantity.js';
import { chanceNeverBelow } from './chanceNeverBelow.js';
import { meterOf, type MeterOnTank, meterSpread } from './meterSpread.js';

/** What a level wanders in a day unless the keeper knows better, as a share of the low limit. */
const usualDriftShare = 0.01;

/**
 * Chance that the true level never was below the band in the running hold, from its first reading to its last.
 *
 * See chanceNeverBelow for the model and the equation.
 *
 * Basis: of the readings of one instant the lowest enters, with its low end; the spread of a reading is that of the
 *   meter at that reading. An untested stretch does not cut the hold here: it costs chance.
 * Definition: chanceNeverBelow over the running hold; drift 1 % of the low limit per √day unless given.
 *
 * @param columns readings in time order
 * @param given low limit [mg/L]; the meter's accuracy [mg/L] and percent [1]; drift [mg/L per √day]
 * @returns from 0 to 1 [1]
 */
export function holdChance(columns: ReadingColumns, given: MeterOnTank & { low: number }): Result<Fraction, Problem> {
  const { low, drift = copperPerRootDay(usualDriftShare * low) } = given;
  const meter = meterOf(given);
  if (!meter.ok) return meter;
  const terms = { low, longestGap: Infinity, confirm: 1 } as const;
  const hold = runningHold(traceHolds(columns, terms), terms);
  if (!hold.ok) return hold;
  const { when, level } = lowestAtEachInstant(columns, hold.value);
  const spread = level.map((reading) => meterSpread(given, reading));
  return ok(fraction(chanceNeverBelow({ when, level, spread, low, drift })));
}

function lowestAtEachInstant(
  { when, low }: ReadingColumns,
  { firstIndex, lastIndex }: Hold,
): { when: Float64Array; level: Float64Array } {
  const instants = new Float64Array(lastIndex - firstIndex + 1);
  const levels = new Float64Array(instants.length);
  let count = 0;
  for (let index = firstIndex; index <= lastIndex; index++) {
    const at = when[index] ?? NaN;
    const level = low[index] ?? NaN;
    if (count > 0 && at - (instants[count - 1] ?? NaN) < instantDays) {
      levels[count - 1] = Math.min(levels[count - 1] ?? NaN, level);
      continue;
    }
    instants[count] = at;
    levels[count] = level;
    count++;
  }
  return { when: instants.subarray(0, count), level: levels.subarray(0, count) };
}
