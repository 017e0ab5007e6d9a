import type { Finding } from '../../../src/engine/rules/finding.js';
import { ownDayCount } from '../../../src/engine/rules/ownDayCount.js';
import { dailyLog, days } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

function found(cells: readonly (string | number)[], terms = ''): readonly Finding[] {
  const log = dailyLog('Date | Copper | Hold day', cells);
  return ownDayCount.find(treatmentFrom(log, `volume | 200 L\nform | chelated\n${terms}`), new Set());
}

/** Readings in the band, each with its day from a first one on. */
const counted = (count: number, first: number): string[] =>
  Array.from({ length: count }, (_, index) => `2.25 | ${first + index}`);

describe('ownDayCount', () => {
  it('notes a count that jumps', () => {
    expect(found([...counted(5, 1), ...counted(4, 8)])).toMatchObject([
      { code: 'own-day-count', severity: 'note', row: 7, written: 8, counted: 6, rows: 4 },
    ]);
  });

  it('notes a count that goes on over a break', () => {
    expect(found([...counted(5, 1), '1.8 |', ...counted(4, 7)])).toMatchObject([
      { row: 8, written: 7, counted: 1, rows: 4 },
    ]);
  });

  it('notes raising days that are counted', () => {
    expect(found(['0 | 1', '0.7 | 2', '1.5 | 3', ...counted(4, 4)])).toMatchObject([
      { row: 3, written: 2, counted: null, rows: 2 },
      { row: 5, written: 4, counted: 1, rows: 4 },
    ]);
  });

  it('notes each stretch', () => {
    expect(found([...counted(5, 1), '2.25 | 16', '2.25 | 7', '2.25 | 18'])).toMatchObject([{ row: 7 }, { row: 9 }]);
  });

  it.each([
    ['days counted from 1', counted(20, 1)],
    ['days counted from 0', counted(20, 0)],
    ['days counted from 2', counted(20, 2)],
    ['no days at all', days(10)],
    ['days after the treatment', [...counted(31, 1), '0.3 | 32', '0.1 | 33']],
  ])('is silent about %s', (_, cells) => {
    expect(found(cells)).toEqual([]);
  });

  it('counts from the arrival', () => {
    expect(found([...days(5), ...counted(5, 1)], 'arrived | 2026-03-06 08:00')).toEqual([]);
  });
});
