import { levelSpan } from '../../../src/app/plot/levelSpan.js';
import type { PlotReading } from '../../../src/app/plot/plotParts.js';

const reading = (level: number): PlotReading => ({
  ...{ when: 0, row: 0, low: level, high: level, level, status: 'in band', bound: null, approximate: false, text: '' },
});
const of = (levels: readonly number[], high: number | null = 2.55, low = 1.95) =>
  levelSpan({ readings: levels.map(reading), course: [], band: { low, high } });

describe('levelSpan', () => {
  it('begins at 0 where the log was raised from there, and near the band where all levels are', () => {
    expect(of([0, 1, 2.2])).toMatchObject({ low: 0, high: 3 });
    expect(of([2.1, 2.2, 2.3]).low).toBeGreaterThan(1);
    expect(of([2.1, 2.2, 2.3]).low).toBeLessThan(1.95);
  });

  it('shows the whole band with a little over it', () => {
    expect(of([2.2]).high).toBeGreaterThan(2.55);
    expect(of([0.2], 0.21, 0.18).high).toBeGreaterThan(0.21);
    expect(of([1.6], null, 1.5).high).toBeGreaterThan(1.9);
    expect(of([]).high).toBeGreaterThan(2.55);
  });

  it('leaves a few readings far above off the scale, and follows where many lie there', () => {
    expect(of([...Array<number>(20).fill(2.2), 19]).high).toBeLessThan(5);
    expect(of(Array<number>(20).fill(7)).high).toBeGreaterThanOrEqual(7);
    expect(of([2.2, 3.1]).high).toBeGreaterThanOrEqual(3.1);
  });

  it('has three to nine even ticks from edge to edge', () => {
    for (const levels of [[0, 2.2], [2.2], [0.2], [7, 8], [2.2, 19], [0.01]]) {
      const { low, high, ticks } = of(levels);
      expect(ticks.length).toBeGreaterThanOrEqual(3);
      expect(ticks.length).toBeLessThanOrEqual(11);
      expect(ticks[0]).toBe(low);
      expect(ticks.at(-1)).toBeCloseTo(high, 9);
    }
  });
});
