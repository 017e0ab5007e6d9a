import fc from 'fast-check';
import type { PlotData, PlotReading } from '../../../src/app/plot/plotParts.js';
import { thinnedReadings } from '../../../src/app/plot/thinnedReadings.js';

function dataOf(levels: readonly number[], brokenAt: readonly number[] = []): PlotData {
  const readings = levels.map((level, row): PlotReading => {
    const status = level < 1.95 ? 'below' : level > 2.55 ? 'above' : 'in band';
    return { when: row / 24, row, low: level, high: level, level, status, bound: null, approximate: false, text: '' };
  });
  const breaks = brokenAt.map((row) => ({ when: row / 24, row, why: 'below' as const, lost: 1 }));
  const none = { course: [], holds: [], untested: [], doses: [], changes: [], fish: [], unread: [] };
  const span = { from: 0, to: (levels.length - 1) / 24, asOf: null, band: { low: 1.95, high: 2.55 }, wantedDays: 30 };
  return { ...span, ...none, readings, breaks };
}

describe('thinnedReadings', () => {
  it('leaves a usual log alone', () => {
    const data = dataOf(Array.from({ length: 600 }, (_, at) => 2 + (at % 5) / 10));
    expect(thinnedReadings(data, 50)).toBe(data.readings);
  });

  it('keeps what is below and above in every column, in at most two marks a column and one a break', () => {
    const level = fc.oneof(
      { weight: 40, arbitrary: fc.constant(2.2) },
      { weight: 1, arbitrary: fc.double({ min: 0, max: 5, noNaN: true }) },
    );
    fc.assert(
      fc.property(
        fc.array(level, { minLength: 601, maxLength: 3000 }),
        fc.integer({ min: 20, max: 300 }),
        (levels, columns) => {
          const data = dataOf(levels);
          const kept = thinnedReadings(data, columns);
          expect(kept.length).toBeLessThanOrEqual(2 * columns);
          const width = (data.to - data.from) / columns;
          for (const status of ['below', 'above'] as const) {
            const drawn = kept.filter((reading) => reading.status === status).map(({ when }) => when);
            const far = data.readings.filter(
              (reading) => reading.status === status && !drawn.some((when) => Math.abs(when - reading.when) <= width),
            );
            expect(far).toEqual([]);
          }
        },
      ),
      { seed: 20260504, numRuns: 60 },
    );
  });

  it('keeps every reading that broke a hold, even beside a lower one', () => {
    const levels = Array.from({ length: 2000 }, (_, at) => (at % 100 === 50 ? 1.9 : at % 100 === 51 ? 1.5 : 2.2));
    const rows = levels.flatMap((level, at) => (level === 1.9 ? [at] : []));
    const kept = new Set(thinnedReadings(dataOf(levels, rows), 40).map(({ row }) => row));
    expect(rows.filter((row) => !kept.has(row))).toEqual([]);
  });
});
