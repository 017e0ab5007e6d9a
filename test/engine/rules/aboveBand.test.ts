import { aboveBand } from '../../../src/engine/rules/aboveBand.js';
import type { Finding } from '../../../src/engine/rules/finding.js';
import { dailyLog, days } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated
meter accuracy | 0.05`;

function found(cells: readonly (string | number)[], form = card, named: readonly number[] = []): readonly Finding[] {
  return aboveBand.find(treatmentFrom(dailyLog('Date | Copper | Signs', cells), form), new Set(named));
}

describe('aboveBand', () => {
  it('warns of a level over the top by up to a tenth once', () => {
    expect(found([2.4, 2.7, 2.4])).toMatchObject([
      { code: 'above-band', severity: 'warning', row: 3, level: 2.7, top: 2.55, reason: 'once' },
    ]);
  });

  it('is danger twice running, at the second', () => {
    expect(found([2.4, 2.7, 2.68, 2.66, 2.4])).toMatchObject([
      { severity: 'warning', row: 3 },
      { severity: 'danger', row: 4, reason: 'twice' },
    ]);
  });

  it('is danger over the top by more than a tenth', () => {
    expect(found([2.4, 2.9, 2.4])).toMatchObject([{ severity: 'danger', row: 3, reason: 'far' }]);
    expect(found([2.4, 2.805, 2.4])).toMatchObject([{ severity: 'warning', row: 3 }]);
  });

  it.each([
    ['on the same day', ['2.4', '2.7 | not eating', '2.4']],
    ['within the meter’s error', ['2.4', '2.57 | breathing heavily', '2.4']],
    ['a day later', ['2.4', '2.7', '2.4 | lethargic']],
  ])('is danger with signs %s', (_, cells) => {
    expect(found(cells)).toMatchObject([{ severity: 'danger', row: 3, reason: 'signs' }]);
  });

  it('judges a range by its high end, and the higher of two readings at one instant', () => {
    expect(found([2.4, '2.4-2.7', 2.4])).toMatchObject([{ row: 3, level: 2.7 }]);
    expect(found([2.4, 2.4]).length).toBe(0);
    const twice = `Date | Copper
2026-03-01 08:00 | 2.7
2026-03-01 08:00 | 2.4`;
    expect(aboveBand.find(treatmentFrom(twice, card), new Set())).toMatchObject([{ severity: 'warning', row: 2 }]);
  });

  it('warns of a reading whose top is not known', () => {
    expect(found([2.4, '>2.5', 2.4])).toMatchObject([{ severity: 'warning', row: 3, reason: 'top unknown' }]);
    expect(found([2.4, '>5.0', 2.4])).toMatchObject([{ severity: 'danger', row: 3, reason: 'far' }]);
  });

  it.each([
    ['above the middle of the log', [2.4, 2.4, 2.58, 2.57, 2.4, 2.4]],
    ['just over the top', [2.4, 2.551, 2.5501, 2.4]],
  ])('is danger twice running within the meter’s error, %s', (_, cells) => {
    const danger = found(cells).filter(({ severity }) => severity === 'danger');
    expect(danger).toMatchObject([{ row: cells.findIndex((level) => level > 2.55) + 3, reason: 'twice' }]);
  });

  it.each([
    ['two such readings with one in the band between', [2.4, 2.58, 2.5, 2.58, 2.4]],
    ['a single reading over it by less than the meter’s error', [2.4, 2.58, 2.4]],
    ['a reading at the top', [2.5, 2.55, 2.5]],
    ['levels below the band', [1, 1.5, 1.9]],
    ['signs beside a level in the band', ['2.4', '2.4 | not eating', '2.4']],
  ])('is silent about %s', (_, cells) => {
    expect(found(cells)).toEqual([]);
  });

  it('is silent about a band without a top', () => {
    expect(found([2.4, 3.4, 2.4], 'volume | 200 L\nband | 2')).toEqual([]);
  });

  it('is silent about what follows from a slip that is named', () => {
    const cells = [...days(4, 2.4), 4.2, ...days(4, 2.4)];
    expect(found(cells)).toHaveLength(1);
    expect(found(cells, card, [6])).toEqual([]);
  });

  it('finds readings that stay over it by less than the meter’s error', () => {
    expect(found(days(6, 2.58))).toMatchObject([
      { severity: 'warning', row: 2 },
      { severity: 'danger', row: 3, reason: 'twice' },
    ]);
  });
});
