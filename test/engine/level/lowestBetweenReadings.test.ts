import { lowestBetweenReadings } from '../../../src/engine/level/lowestBetweenReadings.js';
import { copperPerRootDay } from '../../../src/engine/units/quantity.js';
import { eventsOf, type Line } from './eventsOf.js';
import { modelOf } from './modelOf.js';

const lowestOf = (lines: readonly Line[], different: Parameters<typeof modelOf>[1] = {}) =>
  lowestBetweenReadings(eventsOf(lines), modelOf(lines, { lossRate: 0, ...different }));

describe('lowestBetweenReadings', () => {
  it('finds the dip of an unmatched change that was dosed up again before the next test', () => {
    // 2 mg/L, 50 of 200 L changed: 1.5; 10 mL × 10 ÷ 200 L = 0.5: 2 again
    const lowest = lowestOf([
      [1, 'reading', 2],
      [1.5, 'change', 50, 0],
      [1.6, 'dose', 10],
      [2, 'reading', 2],
      [3, 'reading', 2],
    ]);
    expect(lowest.count).toBe(2);
    expect([...lowest.from]).toEqual([0, 3]);
    expect([...lowest.to]).toEqual([3, 4]);
    expect(lowest.expected[0]).toBeCloseTo(1.5, 9);
    expect(lowest.expectedWhen[0]).toBe(1.5);
    expect(lowest.highEvent[0]).toBe(1);
    expect(lowest.highWhen[0]).toBe(1.5);
    // One reading shows the level before, two show three quarters of it, ± 0.098 each; three quarters of it is left.
    expect(lowest.high[0]).toBeCloseTo(1.5 + (0.75 * 0.098) / Math.sqrt(1 + 2 * 0.75 ** 2), 9);
    expect(lowest.expected[1]).toBeCloseTo(2, 9);
  });

  it('finds the end of a slow fall just before a dose', () => {
    const lowest = lowestOf(
      [
        [1, 'reading', 2],
        [11, 'dose', 20],
        [11.5, 'reading', 2.2],
      ],
      { lossRate: 0.05 },
    );
    const before = modelOf(
      [
        [1, 'reading', 2],
        [11, 'dose', 20],
        [11.5, 'reading', 2.2],
      ],
      { lossRate: 0.05 },
    );
    expect(lowest.expectedWhen[0]).toBe(11);
    expect(lowest.expected[0]).toBe(before.expectedBefore[1]);
    expect(lowest.expected[0]).toBeLessThan(1.35);
  });

  it('looks into the middle of a long stretch, where a level that is lost and drifts back sags', () => {
    const lines: Line[] = [
      [0, 'reading', 2],
      [6, 'reading', 2],
    ];
    const lowest = lowestOf(lines, { lossRate: 0.1, drift: copperPerRootDay(0.5) });
    expect(lowest.expectedWhen[0]).toBe(3);
    // Both ends known, the middle is 2 ÷ cosh(0.1·3)
    expect(lowest.expected[0]).toBeCloseTo(2 / Math.cosh(0.3), 2);
    expect(lowest.highWhen[0]).not.toBe(3);
  });

  it('takes bounds as tests, and no interval from fewer than two', () => {
    expect(
      lowestOf([
        [0, 'reading', 2],
        [1, 'reading', 5, Infinity],
        [2, 'reading', 2],
      ]).count,
    ).toBe(2);
    expect(
      lowestOf([
        [0, 'reading', 2],
        [1, 'dose', 1],
      ]).count,
    ).toBe(0);
  });

  it('leaves out what is not known', () => {
    const lowest = lowestOf([
      [0, 'reading', 5, Infinity],
      [1, 'change', 200, 1],
      [2, 'reading', 1],
      [3, 'reading', 1],
    ]);
    expect(lowest.expected[0]).toBeCloseTo(1, 9);
    expect(lowest.expectedWhen[0]).toBe(1);
    expect([...lowest.expected].every(Number.isFinite)).toBe(true);
  });
});
