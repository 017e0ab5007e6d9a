import * as fc from 'fast-check';
import { serialDay } from '../../../src/engine/units/quantity.js';
import { lossRate, type LossRate } from '../../../src/engine/water/lossRate.js';
import type { LossReading } from '../../../src/engine/water/lossFault.js';

/** Rows of: day, level, rise. */
const log = (...rows: readonly (readonly [day: number, level: number, rise?: number])[]): LossReading[] =>
  rows.map(([day, level, rise = 0], index) => ({
    when: serialDay(46023 + day),
    low: level,
    high: level,
    rise,
    row: index + 2,
  }));

function rate(readings: readonly LossReading[]): Extract<LossRate, { percentADay: number }> {
  const result = lossRate(readings);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  if (result.value.verdict === 'too-few-readings') throw new Error('too few readings');
  return result.value;
}

describe('lossRate', () => {
  it('finds the rate of a level that falls by 3 % a day', () => {
    const found = rate(log([0, 2.4], [1, 2.4 * 0.97], [2, 2.4 * 0.97 ** 2], [4, 2.4 * 0.97 ** 4]));
    expect(found.percentADay).toBeCloseTo(3, 9);
    expect(found.low).toBeCloseTo(3, 6);
    expect(found.high).toBeCloseTo(3, 6);
    expect(found.rSquared).toBeCloseTo(1, 12);
    expect(found.verdict).toBe('absorbs');
  });

  // Computed once with an independent library: slope −0.0212892990 ± 3.18244631·0.0017264644 a day.
  it('gives the 95 % interval of a noisy series', () => {
    const found = rate(log([0, 2.5], [1, 2.44], [2, 2.41], [3, 2.33], [4, 2.3]));
    expect(found.percentADay).toBeCloseTo(2.106428148578, 8);
    expect(found.low).toBeCloseTo(1.567083303195, 8);
    expect(found.high).toBeCloseTo(2.642817754272, 8);
    expect(found.rSquared).toBeCloseTo(0.980652321256, 10);
    expect(found.verdict).toBe('absorbs');
  });

  it('takes a rise as added just before its reading', () => {
    // 2.00 falls to 1.90 in a day; 0.10 brings it back to 2.00, three days running: 5 % a day.
    const found = rate(log([0, 2], [1, 2, 0.1], [2, 2, 0.1], [3, 2, 0.1]));
    expect(found.percentADay).toBeCloseTo(5, 9);
    expect(found.verdict).toBe('absorbs');
  });

  it('finds the rate again whatever was added in between', () => {
    const day = fc.record({
      hours: fc.integer({ min: 1, max: 72 }),
      rise: fc.double({ min: 0, max: 0.5, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.5, noNaN: true }),
        fc.array(day, { minLength: 3, maxLength: 20 }),
        (k, days) => {
          let level = 2;
          let when = 0;
          const rows: [number, number, number][] = [[0, level, 0]];
          for (const { hours, rise } of days) {
            when += hours / 24;
            level = level * Math.exp(-k * (hours / 24)) + rise;
            rows.push([when, level, rise]);
          }
          return Math.abs(rate(log(...rows)).percentADay - 100 * (1 - Math.exp(-k))) < 1e-6;
        },
      ),
    );
  });

  it('shows no loss where the level stands still', () => {
    expect(rate(log([0, 2.1], [1, 2.1], [2, 2.1]))).toEqual({
      percentADay: 0,
      low: 0,
      high: 0,
      rSquared: null,
      verdict: 'no-loss-shown',
    });
    // Nor where it rises by what was added: the rounding of the logarithms is not a slope.
    expect(rate(log([0, 0.3], [1, 0.4, 0.1], [2, 0.5, 0.1], [3, 0.7, 0.2]))).toEqual({
      percentADay: 0,
      low: 0,
      high: 0,
      rSquared: null,
      verdict: 'no-loss-shown',
    });
  });

  it('shows no loss where the noise is greater than the slope', () => {
    const found = rate(log([0, 2.1], [1, 2.05], [2, 2.15], [3, 2.08]));
    expect(found.verdict).toBe('no-loss-shown');
    expect(found.low).toBeLessThan(0);
    expect(found.high).toBeGreaterThan(0);
  });

  it('says where the level rises with nothing added', () => {
    const found = rate(log([0, 2], [1, 2.1], [2, 2.2], [3, 2.31]));
    expect(found.verdict).toBe('rises');
    expect(found.high).toBeLessThan(0);
  });

  it.each([
    ['none', log()],
    ['two', log([0, 2], [1, 1.9])],
    ['three at one instant', log([0, 2], [0, 1.9], [0.4 / 86400, 1.8])],
    ['three at two instants', log([0, 2], [0, 1.9], [1, 1.8])],
  ])('has too few readings with %s', (_, readings) => {
    expect(lossRate(readings)).toEqual({ ok: true, value: { verdict: 'too-few-readings' } });
  });

  it('counts the lower of two readings at one instant', () => {
    const twice = log([0, 2], [1, 1.9], [1 + 0.4 / 86400, 2.5], [2, 1.8]);
    const once = log([0, 2], [1, 1.9], [2, 1.8]);
    expect(rate(twice)).toEqual(rate(once));
    // Half a second apart they are two.
    expect(rate(log([0, 2], [1, 1.9], [1 + 0.6 / 86400, 2.5], [2, 1.8]))).not.toEqual(rate(once));
  });

  it('keeps every rise of an instant', () => {
    expect(rate(log([0, 2], [1, 2, 0.05], [1, 2, 0.05], [2, 1.9])).percentADay).toBeCloseTo(
      rate(log([0, 2], [1, 2, 0.1], [2, 1.9])).percentADay,
      12,
    );
  });

  it('does not mind the order of the rows or the date', () => {
    const rows = log([0, 2.5], [1, 2.44], [2, 2.41], [3, 2.33], [4, 2.3, 0.02]);
    const later = rows.map((reading) => ({ ...reading, when: serialDay(reading.when + 300) }));
    expect(rate([...rows].reverse())).toEqual(rate(rows));
    expect(rate(later).percentADay).toBeCloseTo(rate(rows).percentADay, 9);
  });

  it.each([
    ['a zero', 0, 0, '0'],
    ['an under-range', 0, 0.05, '<0.05'],
    ['an over-range', 5, Infinity, '>5'],
  ])('refuses %s with its row', (_, low, high, given) => {
    const rows = log([0, 2], [1, 1.9], [2, 1.8], [3, 1.7]).map((reading) =>
      reading.row === 4 ? { ...reading, low, high } : reading,
    );
    expect(lossRate(rows)).toEqual({ ok: false, problem: { code: 'not-one-level', row: 4, given } });
  });

  it('refuses a rise that is not below its reading, with its row', () => {
    expect(lossRate(log([0, 2], [1, 1.9], [2, 1.8, 1.8], [3, 1.7]))).toEqual({
      ok: false,
      problem: { code: 'rise-not-below-reading', row: 4, rise: 1.8, level: 1.8 },
    });
    // Two rises of one instant together.
    expect(lossRate(log([0, 2], [1, 1.9, 1], [1, 1.9, 1], [2, 1.8], [3, 1.7]))).toEqual({
      ok: false,
      problem: { code: 'rise-not-below-reading', row: 3, rise: 2, level: 1.9 },
    });
  });

  it('names the lowest row of several faults, whatever the times', () => {
    const rows = log([3, 2], [2, 0], [1, 0], [0, 1.7, 2]);
    expect(lossRate(rows)).toMatchObject({ ok: false, problem: { row: 3 } });
  });

  it('refuses readings so close together that a rate a day has no bounds', () => {
    const second = 1 / 86400;
    expect(lossRate(log([0, 2], [2 * second, 2.1], [4 * second, 2]))).toMatchObject({
      ok: false,
      problem: { code: 'readings-too-close' },
    });
  });
});
