import { openHold } from './openHold.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { answerText } from './phrases.js';
import type { Treatment } from './treatment.js';
import type { HoldAnswer } from './holdAnswer.js';

interface BareZero {
  readonly code: 'bare-zero';
  readonly ifZero: HoldAnswer;
  readonly ifUntested: HoldAnswer;
}

/**
 * A bare 0 inside a hold, where no empty cell of the log shows that this host keeps the two apart: an empty cell or a
 * reading? A warning where the answer hangs on it.
 */
export const bareZero: Rule<BareZero> = {
  about: 'a bare 0 inside a hold that may be an empty cell, where the answer depends on it',
  codes: { 'bare-zero': ['warning'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu', 2.25, 2.25, 0, 2.25, 2.25), finds: ['warning 4 bare-zero'] },
    { log: daily('Cu', 2.25, 2.25, '0 mg/L', 2.25, 2.25), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<BareZero>[] {
  const open = treatment.readings.zeroRows.length === 0 ? null : openHold(treatment);
  if (open === null || open.row === null || !open.zeros.includes(open.row)) return [];
  const { row, ifBelow, ifHeld } = open;
  const reading = treatment.readings.row.indexOf(row);
  const at = { when: treatment.readings.when[reading] ?? null, row, source: 'Practice' } as const;
  return [{ ...at, code: 'bare-zero', severity: 'warning', ifZero: ifBelow, ifUntested: ifHeld }];
}

function words({ ifZero, ifUntested }: BareZero): FindingWords {
  return {
    finding: `Reads 0: if that is real write "0 mg/L" (then ${answerText(ifZero)}), if nobody tested write "none" (then ${answerText(ifUntested)}).`,
    why: 'Some spreadsheets hand over an empty cell as 0, and in a hold the two mean opposite things.',
  };
}
