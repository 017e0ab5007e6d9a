import { fishCount } from '../fish/fishCount.js';
import type { ColumnKind } from '../log/headings/columnKinds.js';
import type { Log } from '../log/table/log.js';
import type { Problem } from '../result/problem.js';
import { shown } from '../units/shown.js';

const deciding: readonly ColumnKind[] = ['time', 'fish in', 'fish out', 'dead'];

/**
 * The lowest row whose fish cannot be counted: it has no time, an error, or says no number, as in "tangs".
 *
 * @param log rows with fish that come in or die
 * @returns the problem of that row; null: every fish is counted
 */
export function unreadFish(log: Log): Problem | null {
  let lowest: { readonly row: number; readonly problem: Problem } | null = null;
  for (const fault of log.faults) {
    if (deciding.includes(fault.kind) && (lowest === null || fault.row < lowest.row)) lowest = fault;
  }
  for (const column of ['fish in', 'dead'] as const) {
    const texts = log.texts[column];
    for (let entry = 0; texts !== null && entry < log.count; entry++) {
      const text = texts[entry] ?? '';
      const row = log.row[entry] ?? 0;
      if (text === '' || (lowest !== null && row >= lowest.row) || fishCount(text, column).exact) continue;
      lowest = { row, problem: { code: 'not-a-value', at: { row }, given: shown(text), kind: 'fish count' } };
    }
  }
  return lowest === null ? null : lowest.problem;
}
