import type { Finding } from '../../../src/engine/rules/finding.js';
import { readingsOnLimit } from '../../../src/engine/rules/readingsOnLimit.js';
import { dailyLog, days } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

function found(cells: readonly (string | number)[], form = 'form | chelated'): readonly Finding[] {
  return readingsOnLimit.find(treatmentFrom(dailyLog('Date | Copper', cells), `volume | 200 L\n${form}`), new Set());
}

describe('readingsOnLimit', () => {
  it('warns at the third in a row', () => {
    expect(found([2.2, ...days(3, 1.95), 2.2])).toMatchObject([
      { code: 'readings-on-limit', severity: 'warning', row: 5, limit: 1.95, rows: [3, 4, 5] },
    ]);
  });

  it('warns once', () => {
    expect(found([...days(6, 1.95), 2.2, ...days(3, 1.95)])).toMatchObject([{ row: 4 }]);
  });

  it('knows the limit without its allowance, unless that is the aim', () => {
    expect(found([2.2, ...days(3, 2)])).toMatchObject([{ row: 5, limit: 2 }]);
    expect(found([2.2, ...days(3, 2)], 'form | chelated\naim | 2')).toEqual([]);
  });

  it("knows a person's own band", () => {
    expect(found(days(3, '0.40'), 'band | 0.4-0.5')).toMatchObject([{ row: 4, limit: 0.4 }]);
  });

  it.each([
    ['two in a row', [2.2, 1.95, 1.95, 2.2, 1.95, 1.95]],
    ['readings beside the limit', [1.96, 1.96, 1.96, 1.94, 1.94, 1.94]],
    ['one limit, then the other', [1.95, 1.95, 2, 2, 1.95]],
    ['readings at the top', days(4, 2.55)],
    ['approximate readings', days(4, '~1.95')],
  ])('is silent about %s', (_, cells) => {
    expect(found(cells)).toEqual([]);
  });

  it('takes readings at one instant for one', () => {
    const log = `Date | Copper\n${days(3, '2026-03-01 08:00 | 1.95').join('\n')}`;
    expect(readingsOnLimit.find(treatmentFrom(log, 'volume | 200 L\nform | chelated'), new Set())).toEqual([]);
  });
});
