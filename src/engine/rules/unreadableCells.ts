import type { ColumnKind } from '../log/headings/columnKinds.js';
import { daily, type Rule, type Found, type FindingWords, type Spoken } from './rule.js';
import { capital } from './phrases.js';
import type { Treatment } from './treatment.js';
import type { Problem } from '../result/problem.js';
import { bareZero } from './bareZero.js';
import { doubleDose } from './doubleDose.js';
import { slipRules } from './slipRows.js';
import { unreadableCopper } from './unreadableCopper.js';
import { wrongForm } from './wrongForm.js';

type UnreadableCell =
  | { readonly code: 'unreadable-cell'; readonly kind: ColumnKind; readonly problem: Problem }
  | { readonly code: 'row-without-time'; readonly problem: Problem };

/** Columns on which the level or the hold depends. */
const telling: ReadonlySet<ColumnKind> = new Set<ColumnKind>(['dose', 'change', 'replacement', 'top-off', 'volume']);

/** A row without a time, or a cell that cannot be read: a warning where the level hangs on it, else a note. */
export const unreadableCells: Rule<UnreadableCell> = {
  about: 'a row without a time, or a cell other than copper that cannot be read',
  codes: { 'unreadable-cell': ['warning', 'note'], 'row-without-time': ['warning'] },
  sources: ['Practice'],
  needs: [],
  yieldsTo: [...slipRules, unreadableCopper, wrongForm, doubleDose, bareZero],
  find,
  words,
  examples: [
    { log: daily('Cu|dose', '2.25|', '2.25|some'), finds: ['warning 3 unreadable-cell'] },
    { log: 'When|Cu\nsometime|2.2\n2026-03-02 08:00|2.25', finds: ['warning 2 row-without-time'] },
    { log: daily('Cu|dose', '2.25|', '2.25|1'), finds: [] },
  ],
};

function find({ log }: Treatment, named: ReadonlySet<number>): readonly Found<UnreadableCell>[] {
  const found: Found<UnreadableCell>[] = [];
  for (const { row, when, kind, problem } of log.faults) {
    if (kind === 'copper' || named.has(row)) continue;
    const at = { when: Number.isNaN(when) ? null : when, row, source: 'Practice' } as const;
    if (kind === 'time') found.push({ ...at, code: 'row-without-time', severity: 'warning', problem });
    else
      found.push({ ...at, code: 'unreadable-cell', severity: telling.has(kind) ? 'warning' : 'note', kind, problem });
  }
  return found;
}

function words({ code, problem }: UnreadableCell, spoken: Spoken): FindingWords {
  return {
    finding: `${capital(spoken.problem(problem))}.`,
    why:
      code === 'row-without-time'
        ? 'A row without a time has no place in the log and is left out.'
        : 'A cell that cannot be read is left out, and the rest of the row is read.',
  };
}
