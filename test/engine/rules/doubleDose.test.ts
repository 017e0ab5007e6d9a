import { doubleDose } from '../../../src/engine/rules/doubleDose.js';
import { findingsBy, foundBy, raisedLog } from './raisedLog.js';

function twice(hour: string, ...after: readonly string[]): string {
  return `${raisedLog}  2026-03-08 08:00 | 2.2 | 4\n  2026-03-08 ${hour} | | 4\n${after.join('\n')}`;
}

describe('doubleDose', () => {
  it('finds two doses within 3 hours without a test between, at the later row', () => {
    expect(foundBy(doubleDose, twice('09:00'))).toEqual(['danger 10 double-dose']);
    expect(foundBy(doubleDose, twice('08:00'))).toEqual(['danger 10 double-dose']);
    expect(foundBy(doubleDose, twice('10:59'))).toEqual(['danger 10 double-dose']);
  });

  it('finds a dose given once more between the parts of a plan', () => {
    const parts = `when | Cu | dose\n 2026-03-01 08:00 | 0 | 2\n 2026-03-01 11:00 | | 2\n 2026-03-01 13:00 | | 2\n 2026-03-01 15:00 | | 2`;
    expect(foundBy(doubleDose, parts)).toEqual(['danger 4 double-dose', 'danger 5 double-dose']);
  });

  it('takes a reading of the very moment of both doses for none between them', () => {
    const log = `${raisedLog}  2026-03-08 08:00 | | 4\n  2026-03-08 08:00 | 2.2 | 4`;
    expect(foundBy(doubleDose, log)).toEqual(['danger 10 double-dose']);
  });

  it('says from the next reading whether it was dosed or written twice', () => {
    const both = findingsBy(doubleDose, twice('09:00', '  2026-03-09 08:00 | 2.59 |'))[0];
    expect(both).toMatchObject({ verdict: 'dosed twice', next: { row: 11, level: 2.59 }, first: { row: 9, dose: 4 } });
    expect(findingsBy(doubleDose, twice('09:00', '  2026-03-09 08:00 | 2.41 |'))[0]).toMatchObject({
      verdict: 'written twice',
    });
    expect(findingsBy(doubleDose, twice('09:00'))[0]).toMatchObject({ verdict: 'no reading', next: null });
  });

  it('says that it cannot tell a difference within the error of the meter', () => {
    const small = `${raisedLog}  2026-03-08 08:00 | 2.2 | 0.5\n  2026-03-08 08:30 | | 0.5\n  2026-03-09 08:00 | 2.24 |`;
    expect(findingsBy(doubleDose, small)[0]).toMatchObject({ code: 'double-dose', verdict: 'cannot tell' });
  });

  it.each([
    ['three hours apart', twice('11:00')],
    ['with a test between', `${raisedLog}  2026-03-08 08:00 | 2.2 | 1\n  2026-03-08 09:00 | 2.24 | 1`],
    [
      'with a test between that cannot be read',
      `${raisedLog}  2026-03-08 08:00 | 2.2 | 1\n  2026-03-08 09:00 | LOW | 1`,
    ],
    ['one dose a day', raisedLog],
    [
      'as equal parts of a plan',
      `when | Cu | dose\n 2026-03-01 08:00 | 0 | 2\n 2026-03-01 10:50 | | 2\n 2026-03-01 14:10 | | 2\n 2026-03-01 16:55 | | 2`,
    ],
    [
      'as eight parts of a day at even times',
      `when | Cu | dose\n 2026-03-01 08:00 | 0 | 2\n 2026-03-01 09:43 | | 2\n 2026-03-01 11:26 | | 2.1\n 2026-03-01 13:09 | | 2`,
    ],
    ['with a date alone', `${raisedLog}  2026-03-08 | 2.2 | 1\n  2026-03-08 | | 1`],
  ])('leaves doses alone %s', (_, log) => {
    expect(foundBy(doubleDose, log)).toEqual([]);
  });
});
