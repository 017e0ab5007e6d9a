import { copperStates } from '../log/table/log.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';

/** Readings that are approximate, set aside, or have a date and no time of day: one note for each sort. */
export const notedReadings: Rule = ({ log }) => {
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
  const found: Finding[] = [];
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
};
