import { pastColumns, pastRows } from '../../../../../src/app/templates/demo/past/pastRows.js';

const column = (heading: string): readonly (string | number | null)[] => {
  const at = pastColumns.findIndex((each) => each.heading === heading);
  return pastRows.map((row) => row[at] ?? null);
};

describe('pastRows', () => {
  it('are some 60 rows, each as wide as the headings', () => {
    expect(pastRows.length).toBeGreaterThanOrEqual(55);
    expect(pastRows.length).toBeLessThanOrEqual(65);
    expect(new Set(pastRows.map((row) => row.length))).toEqual(new Set([pastColumns.length]));
  });

  it('are written as people write: dates once a day, times in three ways, readings as texts and numbers', () => {
    const dates = column('Date').filter((date) => date !== null);
    expect(dates.length).toBeLessThan(pastRows.length);
    expect(new Set(dates).size).toBe(dates.length);
    for (const way of [/^\d+:\d\d [AP]M$/, /^\d\d:\d\d$/, /^\d{4}$/])
      expect(column('Time').some((time) => way.test(String(time)))).toBe(true);
    for (const kind of [/^</, /ppm$/, /^~/, /^void/, /^\d+\.\d+$/])
      expect(column('Cu test').some((copper) => kind.test(String(copper)))).toBe(true);
  });

  it('count thirty days, though a reading was below the band on the fifth', () => {
    const days = column('day #').filter((day) => day !== null);
    expect(days[0]).toBe(1);
    expect(days[days.length - 1]).toBe(30);
    const below = pastRows.findIndex((_, at) => column('Cu test')[at] === 1.85);
    expect(column('day #')[below]).toBe(5);
  });
});
