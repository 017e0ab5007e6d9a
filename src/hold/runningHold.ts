import type { ReadingColumns } from '../log/readingColumns.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { shownNumber } from '../units/shown.js';
import { levelTolerance } from '../units/quantity.js';
import { isoFromSerial } from '../units/time/isoFromSerial.js';
import type { HoldTerms } from './holdTerms.js';
import type { Hold, HoldTrace } from './traceHolds.js';

/**
 * The hold that the last reading belongs to, or why none runs.
 *
 * Definition: as traced; without a reading, or after a reading below, there is none.
 */
export function runningHold(columns: ReadingColumns, terms: HoldTerms, trace: HoldTrace): Result<Hold, Problem> {
  const last = trace.lastIndex;
  if (last === null) return refuse({ code: 'no-reading' });
  if (trace.running !== null) return ok(trace.running);
  const level = columns.low[last] ?? NaN;
  return refuse({
    code: 'no-hold',
    level: shownNumber(level),
    when: isoFromSerial(columns.when[last] ?? NaN),
    row: columns.row[last] ?? 0,
    low: terms.low,
    confirming: level >= terms.low - levelTolerance,
  });
}
