import { serialOf } from '../../../src/app/templates/sheets/rowsOf.js';
import { timeTicks } from '../../../src/app/plot/timeTicks.js';

const ticks = (from: string, to: string, most: number) =>
  timeTicks(serialOf(from), serialOf(to), most).map(({ label, under }) => `${label} ${under}`.trim());

describe('timeTicks', () => {
  it('has times of day for short logs, with the day where it begins', () => {
    expect(ticks('2026-03-01 20:00', '2026-03-03 02:00', 6)).toEqual([
      '00:00 2 Mar 2026',
      '06:00',
      '12:00',
      '18:00',
      '00:00 3 Mar 2026',
    ]);
  });

  it('has days and weeks, with the year where it changes', () => {
    expect(ticks('2025-12-29 08:00', '2026-01-03 08:00', 6)).toEqual([
      '30 Dec 2025',
      '31 Dec',
      '1 Jan 2026',
      '2 Jan',
      '3 Jan',
    ]);
    expect(ticks('2026-01-05 00:00', '2026-02-10 00:00', 6)).toEqual([
      '5 Jan 2026',
      '12 Jan',
      '19 Jan',
      '26 Jan',
      '2 Feb',
      '9 Feb',
    ]);
  });

  it('has months by the calendar for long logs', () => {
    expect(ticks('2025-11-20 00:00', '2026-05-20 00:00', 6)).toEqual([
      'Dec 2025',
      'Jan 2026',
      'Feb',
      'Mar',
      'Apr',
      'May',
    ]);
    expect(ticks('2024-11-20 00:00', '2027-05-20 00:00', 6)).toEqual([
      'Jan 2025',
      'Jul',
      'Jan 2026',
      'Jul',
      'Jan 2027',
    ]);
  });

  it('never has more than asked for, nor one outside', () => {
    for (const days of [0.2, 1, 3, 9, 30, 61, 200, 730, 4000]) {
      for (const most of [3, 6, 11]) {
        const made = timeTicks(46023.37, 46023.37 + days, most);
        expect(made.length).toBeLessThanOrEqual(most + 1);
        expect(made.every(({ when }) => when >= 46023.37 && when <= 46023.37 + days)).toBe(true);
      }
    }
  });
});
