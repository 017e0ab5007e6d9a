import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import type { Cell } from '../units/cell.js';
import { shown } from '../units/shown.js';
import { parseReading } from './parseReading.js';

/**
 * A copper cell as one level, '' where there was no test. A bound is not one level and is refused.
 *
 * Definition: the low end of the reading.
 *
 * @param cell the copper cell
 * @param field the argument's name, for a refusal
 * @returns level [mg/L]
 */
export function readingLevel(cell: Cell, field: string): Result<number | '', Problem> {
  const reading = parseReading(cell, { field });
  if (!reading.ok) return reading;
  if (reading.value.kind !== 'level') return ok('');
  const isBound = reading.value.under !== undefined || reading.value.high === Infinity;
  return isBound ? refuse({ code: 'bound-not-a-level', field, given: shown(cell) }) : ok(reading.value.low);
}
