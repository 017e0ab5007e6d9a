import { copperStates } from '../log/table/log.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { rowsText } from './phrases.js';
import type { Treatment } from './treatment.js';

interface NotedReadings {
  readonly code: 'noted-readings';
  readonly kind: 'approximate' | 'voided' | 'date only';
  readonly rows: readonly number[];
}

/** Readings that are approximate, set aside, or have a date and no time of day: one note for each sort. */
export const notedReadings: Rule<NotedReadings> = {
  about: 'readings that are approximate, set aside, or have a date and no time of day',
  codes: { 'noted-readings': ['note'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu', 2.25, '~2.2', 2.25), finds: ['note 3 noted-readings'] },
    { log: daily('Cu', 2.25, 2.2, 2.25), finds: [] },
  ],
};

function find({ log }: Treatment): readonly Found<NotedReadings>[] {
  const approximate: number[] = [];
  const voided: number[] = [];
  const dateOnly: number[] = [];
  for (let index = 0; index < log.count; index++) {
    const state = log.copper[index];
    if (state === copperStates.void) voided.push(index);
    if (state !== copperStates.reading) continue;
    if (log.dateOnly[index] === 1) dateOnly.push(index);
    if (log.odd.size > 0 && log.odd.get(log.row[index] ?? 0)?.approximate === true) approximate.push(index);
  }
  const found: Found<NotedReadings>[] = [];
  for (const [kind, entries] of [
    ['approximate', approximate],
    ['voided', voided],
    ['date only', dateOnly],
  ] as const) {
    const [first] = entries;
    if (first === undefined) continue;
    const rows = entries.map((index) => log.row[index] ?? 0);
    const at = { when: log.when[first] ?? NaN, row: log.row[first] ?? 0, source: 'Practice' } as const;
    found.push({ ...at, code: 'noted-readings', severity: 'note', kind, rows });
  }
  return found;
}

function words({ kind, rows }: NotedReadings): FindingWords {
  const [one, several, why] = sorts[kind];
  return { finding: `${rows.length} ${rows.length === 1 ? one : several}: ${rowsText(rows)}.`, why };
}

/** One of them, several, and what becomes of them. */
const sorts: Readonly<Record<NotedReadings['kind'], readonly [string, string, string]>> = {
  approximate: [
    'approximate reading',
    'approximate readings',
    'An approximate reading counts as its number; write what the meter shows.',
  ],
  voided: [
    'reading is set aside as void',
    'readings are set aside as void',
    'A reading set aside is no test, and stays in the log to be seen.',
  ],
  'date only': [
    'reading has a date and no time of day',
    'readings have a date and no time of day',
    'A date alone is its midnight; the hours between tests are as good as the times written.',
  ],
};
