import { readingText } from '../../../src/app/page/readingText.js';
import type { PlotReading } from '../../../src/app/plot/plotParts.js';

const day = 46085;
const reading: PlotReading = {
  when: day + 1 / 3,
  row: 12,
  low: 2.05,
  high: 2.05,
  level: 2.05,
  status: 'in band',
  bound: null,
  approximate: false,
  text: '2.05',
};
const holds = [{ from: day - 2 + 0.25, to: day + 5, days: 6.75, standing: 'running' as const }];

describe('readingText', () => {
  it('says when, how much, where in the band, which day of the hold, and the row', () => {
    expect(readingText(reading, { holds })).toBe('2026-03-04 08:00: 2.05 mg/L, in the band, hold day 3 (row 12)');
  });

  it('counts no hold for a reading that ends one or stands outside of all', () => {
    expect(readingText({ ...reading, status: 'below', text: '<0.05' }, { holds })).toMatch(
      /<0\.05 mg\/L, below the band, no hold/,
    );
    expect(readingText({ ...reading, status: 'above' }, { holds: [] })).toMatch(/above the band, no hold/);
  });
});
