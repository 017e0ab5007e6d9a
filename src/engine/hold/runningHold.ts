import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { shownNumber } from '../units/shown.js';
import { levelTolerance } from '../units/quantity.js';
import { isoFromSerial } from '../../base/isoFromSerial.js';
import type { HoldTerms } from './holdTerms.js';
import type { Hold, HoldTrace } from './holdTrace.js';

/**
 * The hold that the last reading belongs to, or why none runs.
 *
 * Definition: as traced; without a reading, or after a reading below, there is none.
 */
export function runningHold({ running, last }: HoldTrace, terms: HoldTerms): Result<Hold, Problem> {
  if (last === null) return refuse({ code: 'no-reading' });
  if (running !== null) return ok(running);
  return refuse({
    code: 'no-hold',
    level: last.under === null ? shownNumber(last.level) : `<${shownNumber(last.under)}`,
    when: isoFromSerial(last.when),
    row: last.row,
    low: terms.low,
    confirming: last.level >= terms.low - levelTolerance,
  });
}
