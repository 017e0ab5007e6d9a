import type { Finding } from '../../../src/engine/rules/finding.js';
import { unreadableCopper } from '../../../src/engine/rules/unreadableCopper.js';
import { dailyLog, days, firstTest } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated`;

function found(cells: readonly (string | number)[], named: readonly number[] = []): readonly Finding[] {
  return unreadableCopper.find(treatmentFrom(dailyLog('Date | Copper', cells), card), new Set(named));
}

describe('unreadableCopper', () => {
  it('warns of one inside a hold and counts both ways', () => {
    expect(found([...days(10), 'LOW', ...days(10)])).toEqual([
      expect.objectContaining({
        code: 'unreadable-copper',
        severity: 'warning',
        row: 12,
        when: firstTest + 10,
        problem: { code: 'not-a-reading', at: { row: 12 }, given: '"LOW"' },
        counts: { ifBelow: { kind: 'running', days: 9 }, ifHeld: { kind: 'running', days: 20 } },
      }),
    ]);
  });

  it('counts both ways at the end of a hold that runs', () => {
    expect(found([...days(10), 'ok'])).toMatchObject([
      { row: 12, counts: { ifBelow: { kind: 'not complete', days: 0 }, ifHeld: { kind: 'running', days: 10 } } },
    ]);
  });

  it('counts one that bridges a stretch without a test', () => {
    expect(found([...days(10), '', '', '', 'fine', '', ...days(3)])).toMatchObject([
      { row: 15, counts: { ifBelow: { kind: 'running', days: 2 }, ifHeld: { kind: 'running', days: 17 } } },
    ]);
  });

  it('takes several together', () => {
    expect(found([...days(10), 'LOW', ...days(5), 'ok', ...days(2)])).toMatchObject([
      { row: 12, counts: { ifBelow: { days: 1 }, ifHeld: { days: 18 } } },
      { row: 18, counts: { ifBelow: { days: 1 }, ifHeld: { days: 18 } } },
    ]);
  });

  it.each([
    ['while raising', [0, 'LOW', ...days(5)], 3],
    ['before the first reading of a hold', [0, 1, 'ok?', ...days(5)], 4],
    ['after the hold', [...days(31), 0.5, 'nothing'], 34],
  ])('has one count for a cell %s', (_, cells, row) => {
    expect(found(cells)).toMatchObject([{ severity: 'warning', row, counts: null }]);
  });

  it.each([
    ['readings of every sort', [...days(3), '~2.2', '<0.05', '2.0-2.25', '1.05 x2', '2,1 ppm']],
    ['cells without a test', [2.2, '', 'none', '-', 2.2]],
    ['readings set aside', [2.2, 'void 1.62', 2.2]],
  ])('is silent about %s', (_, cells) => {
    expect(found(cells)).toEqual([]);
  });

  it('is silent where a cause is named', () => {
    expect(found([...days(3), 2250, 2.2])).toHaveLength(1);
    expect(found([...days(3), 2250, 2.2], [5])).toEqual([]);
  });
});
