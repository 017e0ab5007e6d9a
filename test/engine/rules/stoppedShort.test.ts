import type { Finding } from '../../../src/engine/rules/finding.js';
import { stoppedShort } from '../../../src/engine/rules/stoppedShort.js';
import { dailyLog, days } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated`;

function found(cells: readonly (string | number)[], terms = '', named: readonly number[] = []): readonly Finding[] {
  return stoppedShort.find(
    treatmentFrom(dailyLog('Date | Copper | Notes', cells), `${card}\n${terms}`),
    new Set(named),
  );
}

describe('stoppedShort', () => {
  it('is danger where the level falls away before the days are over', () => {
    expect(found([...days(20), 1.2, 0.5, 0.2])).toMatchObject([
      { code: 'stopped-short', severity: 'danger', row: 22, days: 19, wanted: 30, said: false, level: 0.2 },
    ]);
  });

  it('is danger where one reading shows that no copper is left', () => {
    expect(found([...days(20), 0.05])).toMatchObject([{ severity: 'danger', row: 22 }]);
  });

  it.each(['copper removed', 'took copper out', 'treatment finished', 'stopped copper', 'quarantine over'])(
    'takes %j at the end at its word, at its row',
    (words) => {
      expect(found([...days(19), `2.25 | ${words}`])).toMatchObject([
        { severity: 'danger', row: 21, days: 19, said: true },
      ]);
      expect(found([...days(19), `| ${words}`, 1.6])).toMatchObject([{ severity: 'danger', row: 21, days: 19 }]);
    },
  );

  it.each(['carbon added', 'fresh resin in the filter', 'running carbon'])(
    'takes %j for it where the level falls away',
    (words) => {
      expect(found([...days(19), `2.25 | ${words}`, 0.8, 0.3])).toMatchObject([
        { severity: 'danger', row: 21, days: 19 },
      ]);
      expect(found([...days(19), `2.25 | ${words}`, 1.8])).toEqual([]);
    },
  );

  it('is a warning where under a day was short', () => {
    expect(found([...days(30), `2.25 | copper out`], 'days | 30.5')).toMatchObject([
      { severity: 'warning', days: 30, wanted: 30.5 },
    ]);
    expect(found([...days(30), 0.8, 0.1], 'days | 29.5')).toMatchObject([{ severity: 'warning', days: 29 }]);
    expect(found([...days(30), 0.8, 0.1])).toMatchObject([{ severity: 'danger', days: 29 }]);
  });

  it('counts the days of the fish, not of the hold', () => {
    const cells = [...days(31), 0.8, 0.1];
    expect(found(cells)).toEqual([]);
    expect(found(cells, 'arrived | 2026-03-06 08:00')).toMatchObject([{ severity: 'danger', days: 25 }]);
  });

  it.each([
    ['a hold that was long enough', [...days(31), 1.2, 0.3]],
    ['a hold that runs', days(20)],
    ['a break that is made good', [...days(20), 0.8, ...days(3)]],
    ['a break at the last reading', [...days(20), 1.8]],
    ['words at another time', [...days(5), '2.25 | took the carbon out: copper removed?', ...days(5)]],
    ['what is yet to come', [...days(20), '2.25 | will stop copper after day 30']],
    ['what was not done', [...days(20), '2.25 | do not add carbon']],
    ['a bound under which there may still be copper', [...days(4, 2.2), '<2']],
    ['a range that reaches up to the band', [...days(4, 2.2), '0-2.2']],
    ['raising', [0, 0.5, 1, '1.5 | carbon removed']],
  ])('is silent about %s', (_, cells) => {
    expect(found(cells)).toEqual([]);
  });

  it('is silent where the reading is a slip that is named', () => {
    expect(found([...days(20), 0.0225])).toEqual([]);
  });
});
