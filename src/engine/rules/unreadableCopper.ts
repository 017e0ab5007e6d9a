import { openHold } from './openHold.js';
import { daily, type Rule, type Found, type FindingWords, type Spoken } from './rule.js';
import { answerText, capital } from './phrases.js';
import type { Treatment } from './treatment.js';
import type { Problem } from '../result/problem.js';
import type { HoldAnswer } from './holdAnswer.js';
import { slipRules } from './slipRows.js';

interface UnreadableCopper {
  readonly code: 'unreadable-copper';
  readonly problem: Problem;
  /** Both counts, where it lies in a hold. */
  readonly counts: { readonly ifBelow: HoldAnswer; readonly ifHeld: HoldAnswer } | null;
}

/**
 * A copper cell that cannot be read: warning. Inside a hold the answer is given both ways, with the cell below the band
 * and inside it.
 */
export const unreadableCopper: Rule<UnreadableCopper> = {
  about: 'a copper cell that cannot be read; inside a hold both counts are given',
  codes: { 'unreadable-copper': ['warning'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: slipRules,
  find,
  words,
  examples: [
    { log: daily('Cu', 2.25, 'LOW', 2.25), finds: ['warning 3 unreadable-copper'] },
    { log: daily('Cu', 2.25, 'none', 2.25), finds: [] },
  ],
};

function find(treatment: Treatment, named: ReadonlySet<number>): readonly Found<UnreadableCopper>[] {
  const faults = treatment.log.faults.filter(({ kind, row }) => kind === 'copper' && !named.has(row));
  if (faults.length === 0) return [];
  const open = openHold(treatment);
  const inHold = new Set(open?.unreadable.map(({ row }) => row));
  return faults.map(({ row, when, problem }) => ({
    code: 'unreadable-copper',
    severity: 'warning',
    when: Number.isNaN(when) ? null : when,
    row,
    source: 'Practice',
    problem,
    counts: open !== null && inHold.has(row) ? { ifBelow: open.ifBelow, ifHeld: open.ifHeld } : null,
  }));
}

function words({ problem, counts }: UnreadableCopper, spoken: Spoken): FindingWords {
  return {
    finding:
      `${capital(spoken.problem(problem))}.` +
      (counts === null
        ? ''
        : ` Counted as in the band: ${answerText(counts.ifHeld)}; as below: ${answerText(counts.ifBelow)}.`),
    why:
      counts === null
        ? 'A cell that cannot be read is no test; the rest of the log is audited without it.'
        : 'Inside a hold a cell that cannot be read may have been a break, so both counts are given.',
  };
}
