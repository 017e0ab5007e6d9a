import type { Finding } from '../../../src/engine/rules/finding.js';
import { levelBelowBetweenTests } from '../../../src/engine/rules/levelBelowBetweenTests.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated
strength | 10 mg/mL
meter accuracy | 0.05`;

const heading = 'Date | Copper | Change L | New water | Dose mL';
const steady = [1, 2, 3, 4, 5, 6].map((day) => `2026-03-0${day} 08:00 | 2.25 | | |`).join('\n');
const later = ['09', '10', '11', '12'].map((day) => `2026-03-${day} 08:00 | 2.25 | | |`).join('\n');

function found(rows: string, named: readonly number[] = [], terms = ''): readonly Finding[] {
  const log = [heading, steady, rows, later].join('\n');
  return levelBelowBetweenTests.find(treatmentFrom(log, `${card}\n${terms}`), new Set(named));
}

/** A change of water without copper, and two hours later the dose that makes up for it. */
const madeUp = (litres: number): string => `2026-03-07 08:00 | 2.25 | ${litres} | 0 |
2026-03-07 10:00 | | | | ${(litres * 2.25) / 10}
2026-03-08 08:00 | 2.25 | | |`;

describe('levelBelowBetweenTests', () => {
  it('is danger where the whole 95 % band is below the low limit', () => {
    expect(found(madeUp(50))).toMatchObject([
      { code: 'level-below-between', severity: 'danger', row: 8, low: 1.95, fromRow: 8, toRow: 10 },
    ]);
    const [dip] = found(madeUp(50));
    expect(dip?.code === 'level-below-between' && [dip.expected, dip.high]).toEqual([
      expect.closeTo(1.69, 1),
      expect.closeTo(1.72, 1),
    ]);
  });

  it('is a warning where only the level expected is', () => {
    expect(found(madeUp(27.3))).toMatchObject([{ severity: 'warning', row: 8 }]);
  });

  it('finds a long untested fall that a dose made good before the test', () => {
    const log = `${heading}
2026-03-01 08:00 | 2.25 | | |
2026-03-02 08:00 | 2.15 | | |
2026-03-03 08:00 | 2.05 | | | 4
2026-03-04 08:00 | 2.15 | | |
2026-03-05 08:00 | 2.05 | | | 4
2026-03-06 08:00 | 2.15 | | |
2026-03-07 08:00 | 2.05 | | |
2026-03-09 07:00 | | | | 8
2026-03-09 08:00 | 2.25 | | |`;
    expect(levelBelowBetweenTests.find(treatmentFrom(log, card), new Set())).toMatchObject([
      { row: 9, fromRow: 8, toRow: 10 },
    ]);
  });

  it.each([
    [
      'a change of water at the level',
      madeUp(50)
        .replace('| 0 |', '| 2.25 |')
        .replace(/\| 11.25/, '| '),
    ],
    ['a small change', madeUp(15)],
    ['the dose first, then the change', '2026-03-07 08:00 | 2.25 | | | 9\n2026-03-07 10:00 | 2.25 | 40 | 2.25 |'],
    [
      'a dip that a test shows: the hold is broken',
      '2026-03-07 08:00 | 2.25 | 50 | 0 |\n2026-03-07 09:00 | 1.7 | | | 11',
    ],
  ])('is silent about %s', (_, rows) => {
    expect(found(rows)).toEqual([]);
  });

  it('is silent about a change that is already named', () => {
    expect(found(madeUp(50), [8])).toEqual([]);
  });

  it('is silent before the arrival and after enough days', () => {
    expect(found(madeUp(50), [], 'arrived | 2026-03-09')).toEqual([]);
    expect(found(madeUp(50), [], 'days | 5')).toEqual([]);
  });
});
