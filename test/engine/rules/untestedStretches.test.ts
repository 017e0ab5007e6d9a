import type { Finding } from '../../../src/engine/rules/finding.js';
import { untestedStretches } from '../../../src/engine/rules/untestedStretches.js';
import { dailyLog, days } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated`;

function found(cells: readonly (string | number)[], terms = '', asOf?: string): readonly Finding[] {
  const log = dailyLog('Date | Copper', cells);
  return untestedStretches.find(treatmentFrom(log, `${card}\n${terms}`, asOf), new Set());
}

/** So many days without a reading. */
const gap = (untested: number): string[] => Array.from({ length: untested }, () => '');

describe('untestedStretches', () => {
  it('notes all stretches of 36 to 72 h in one row', () => {
    expect(found([2.2, '', ...days(3), '', 2.2, 2.2])).toEqual([
      expect.objectContaining({ code: 'untested-noted', severity: 'note', row: 4, rows: [4, 8], longest: 48 }),
    ]);
  });

  it('warns of each from 72 h on', () => {
    expect(found([...days(3), ...gap(2), ...days(3), ...gap(3), 2.2])).toMatchObject([
      { code: 'untested-stretch', severity: 'warning', row: 7, hours: 72, open: false },
      { code: 'untested-stretch', severity: 'warning', row: 13, hours: 96 },
    ]);
  });

  it('says that the hold starts anew beyond the longest gap', () => {
    expect(found([...days(3), ...gap(4), ...days(3)])).toMatchObject([
      { code: 'restarted-untested', severity: 'warning', row: 9, hours: 120, longestGap: 96, days: 2 },
    ]);
    expect(found([...days(3), '', ...days(3)], 'longest gap | 40')).toMatchObject([
      { code: 'restarted-untested', row: 6, hours: 48, longestGap: 40 },
    ]);
  });

  it('warns of a longer one where the keeper has switched that off', () => {
    expect(found([...days(3), ...gap(5), ...days(3)], 'longest gap | none')).toMatchObject([
      { code: 'untested-stretch', severity: 'warning', row: 10, hours: 144 },
    ]);
  });

  it('finds one that ended in a reading below', () => {
    expect(found([...days(3), ...gap(2), 1.5])).toMatchObject([{ code: 'untested-stretch', row: 7, hours: 72 }]);
  });

  it('looks from the last test to the moment asked for', () => {
    expect(found(days(3), '', '2026-03-05 08:00')).toMatchObject([
      { code: 'untested-noted', severity: 'note', row: 4, longest: 48 },
    ]);
    expect(found(days(3), '', '2026-03-07 08:00')).toMatchObject([
      { code: 'untested-stretch', severity: 'warning', row: 4, hours: 96, open: true },
    ]);
    expect(found(days(3), '', '2026-03-04 08:00')).toEqual([]);
  });

  it.each([
    ['daily tests', days(10)],
    ['a stretch while raising', [0.5, ...gap(2), ...days(3)]],
    ['a stretch after the hold', [...days(31), ...gap(6), 0.1]],
    ['a stretch after enough days', [...days(32), ...gap(2), ...days(3)]],
  ])('is silent about %s', (_, cells) => {
    expect(found(cells)).toEqual([]);
  });

  it('is silent about 36 h, and before the arrival', () => {
    const log = dailyLog('Date | Copper', days(6), 36);
    expect(untestedStretches.find(treatmentFrom(log, card), new Set())).toEqual([]);
    expect(found([...days(3), ...gap(2), ...days(5)], 'arrived | 2026-03-06 08:00')).toEqual([]);
  });
});
