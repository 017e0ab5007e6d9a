import type { ColumnKind } from '../log/headings/columnKinds.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';

/** Columns on which the level or the hold depends. */
const telling: ReadonlySet<ColumnKind> = new Set<ColumnKind>(['dose', 'change', 'replacement', 'top-off', 'volume']);

/** A row without a time, or a cell that cannot be read: a warning where the level hangs on it, else a note. */
export const unreadableCells: Rule = ({ log }, named) => {
  const found: Finding[] = [];
  for (const { row, when, kind, problem } of log.faults) {
    if (kind === 'copper' || named.has(row)) continue;
    const at = { when: Number.isNaN(when) ? null : when, row, source: 'Practice' } as const;
    if (kind === 'time') found.push({ ...at, code: 'row-without-time', severity: 'warning', problem });
    else
      found.push({ ...at, code: 'unreadable-cell', severity: telling.has(kind) ? 'warning' : 'note', kind, problem });
  }
  return found;
};
