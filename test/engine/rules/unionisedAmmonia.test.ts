import { unionisedAmmonia } from '../../../src/engine/rules/unionisedAmmonia.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = 'volume | 200 L\nform | chelated';
const water = `${card}\npH | 8.0\ntemperature | 25 C\nsalinity | 34`;
const found = (log: string, on = water): unknown[] =>
  unionisedAmmonia.find(treatmentFrom(log, on), new Set()).map(({ code, severity, row }) => [code, severity, row]);

// 4.28 % of the total is NH3 at pH 8.0, 25 °C, S 34 [BowerBidwell1978, table, read in a copy].
describe('unionisedAmmonia', () => {
  it.each([
    [0.48, 'note'],
    [1.2, 'warning'],
    [2.4, 'danger'],
  ])('judges %d mg/L total as a %s', (total, severity) => {
    expect(found(`Date | Copper | Ammonia\n2026-03-01 | 2.25 | 0\n2026-03-02 | 2.25 | ${total}`)).toEqual([
      ['unionised-ammonia', severity, 3],
    ]);
  });

  it('names each row where it gets worse, and starts anew after a good one', () => {
    const log = `Date | Copper | Ammonia
2026-03-01 | 2.25 | 0.5
2026-03-02 | 2.25 | 2.5
2026-03-03 | 2.25 | 2.5
2026-03-04 | 2.25 | 0
2026-03-05 | 2.25 | 1.2`;
    expect(found(log)).toEqual([
      ['unionised-ammonia', 'note', 2],
      ['unionised-ammonia', 'danger', 3],
      ['unionised-ammonia', 'warning', 6],
    ]);
  });

  it('takes pH, temperature and salinity of the row before those of the card', () => {
    const log = 'Date | Copper | Ammonia | pH | Temp | Salinity\n2026-03-01 | 2.25 | 1 | 8.4 | 26 | 33';
    expect(found(log)).toEqual([['unionised-ammonia', 'danger', 2]]);
    expect(found(log, card)).toEqual([['unionised-ammonia', 'danger', 2]]);
  });

  it('counts as NH3 unless the heading says N, and free ammonia as it is', () => {
    const free = (heading: string, written: number): number | undefined => {
      const [finding] = unionisedAmmonia.find(
        treatmentFrom(`Date | Copper | ${heading}\n2026-03-01 | 2.25 | ${written}`, water),
        new Set(),
      );
      return finding?.code === 'unionised-ammonia' ? finding.free : undefined;
    };
    expect(free('Ammonia', 1)).toBeCloseTo(0.0429, 3);
    expect(free('NH3 ppm', 1)).toBeCloseTo(0.0429, 3);
    expect(free('NH3-N', 1)).toBeCloseTo(0.0429 * 1.21589, 3);
    expect(free('Ammonia (as N)', 1)).toBeCloseTo(0.0429 * 1.21589, 3);
    expect(free('TAN', 1)).toBeCloseTo(0.0429 * 1.21589, 3);
    expect(free('Free ammonia', 0.06)).toBe(0.06);
  });

  it('notes once what it cannot judge', () => {
    const twice = 'Date | Copper | Ammonia\n2026-03-01 | 2.25 | 1\n2026-03-02 | 2.25 | 1';
    expect(found(twice, card)).toEqual([['ammonia-not-judged', 'note', 2]]);
    expect(found(twice, `${card}\npH | 7.2\ntemperature | 25\nsalinity | 34`)).toEqual([
      ['ammonia-outside-range', 'note', 2],
    ]);
  });

  it('judges water a little saltier than the formula reaches', () => {
    expect(found('Date | Copper | Ammonia | Salinity\n2026-03-01 | 2.25 | 3 | 36')).toEqual([
      ['unionised-ammonia', 'danger', 2],
    ]);
  });

  it('is silent about none, a trace, and what is too little to matter in any water', () => {
    expect(found('Date | Copper | Ammonia\n2026-03-01 | 2.25 | 0\n2026-03-02 | 2.25 | 0.25')).toEqual([]);
    expect(found('Date | Copper | Ammonia\n2026-03-01 | 2.25 | 0.05', card)).toEqual([]);
    expect(found('Date | Copper\n2026-03-01 | 2.25')).toEqual([]);
  });
});
