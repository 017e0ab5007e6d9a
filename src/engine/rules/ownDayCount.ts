import * as limits from '../limits/limits.js';
import { secondDays } from '../units/quantity.js';
import { countedHolds, holdAt } from './countedHolds.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import type { Treatment } from './treatment.js';

interface OwnDayCount {
  readonly code: 'own-day-count';
  readonly written: number;
  readonly counted: number | null;
  readonly rows: number;
}

/** The keeper's own count of hold days is off by more than one: a note at the first row of each stretch of rows. */
export const ownDayCount: Rule<OwnDayCount> = {
  about: 'the keeper’s own count of hold days is off',
  codes: { 'own-day-count': ['note'] },
  sources: ['Practice'],
  needs: [['hold day']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|hold day', '2.25|1', '2.25|2', '2.25|6', '2.25|4'), finds: ['note 4 own-day-count'] },
    { log: daily('Cu|hold day', '2.25|1', '2.25|2', '2.25|4'), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<OwnDayCount>[] {
  const { log } = treatment;
  const written = log.numbers['hold day'];
  if (written === null) return [];
  const holds = countedHolds(treatment);
  const end = holds[holds.length - 1]?.isEnough === true ? (holds[holds.length - 1]?.end ?? Infinity) : Infinity;
  const found: Found<OwnDayCount>[] = [];
  let stretch: { at: number; written: number; counted: number | null; rows: number } | null = null;
  const close = (): void => {
    if (stretch !== null) {
      const { at, ...count } = stretch;
      const of = { when: log.when[at] ?? NaN, row: log.row[at] ?? 0, source: 'Practice' } as const;
      found.push({ ...of, ...count, code: 'own-day-count', severity: 'note' });
    }
    stretch = null;
  };
  for (let index = 0; index < log.count; index++) {
    const day = written[index] ?? NaN;
    const when = log.when[index] ?? NaN;
    if (Number.isNaN(day) || when >= end) continue;
    const hold = holdAt(holds, when);
    const counted = hold === null || when < hold.from ? null : Math.floor(when - hold.from + secondDays) + 1;
    const isOff = Math.abs(day - (counted ?? 0)) > limits.dayCountOff.value;
    // A row without a hold and one on another day of it are two mistakes.
    if (!isOff || (stretch !== null && (stretch.counted === null) !== (counted === null))) close();
    if (!isOff) continue;
    if (stretch === null) stretch = { at: index, written: day, counted, rows: 1 };
    else stretch.rows++;
  }
  close();
  return found;
}

function words({ written, counted, rows }: OwnDayCount): FindingWords {
  return {
    finding:
      `The log says day ${written}; ${counted === null ? 'no hold runs' : `it is hold day ${counted}`}` +
      `${rows > 1 ? ` (${rows} rows from here)` : ''}.`,
    why: 'Hold day one is the first day in the band; raising days do not count, and a break goes back to day one.',
  };
}
