import { doseUntested } from '../../../src/engine/rules/doseUntested.js';
import { findingsBy, foundBy, raisedLog } from './raisedLog.js';

describe('doseUntested', () => {
  it('finds a dose with no test since the dose of the day before', () => {
    const log = `${raisedLog}  2026-03-08 08:00 | 2.2 | 1\n  2026-03-09 07:00 | | 1`;
    expect(foundBy(doseUntested, log)).toEqual(['warning 10 dose-untested']);
    expect(findingsBy(doseUntested, log)[0]).toMatchObject({
      after: { row: 9, hours: expect.closeTo(23, 3) as number },
    });
  });

  it('finds a dose on a test of more than a day ago', () => {
    expect(foundBy(doseUntested, `${raisedLog}  2026-03-08 18:00 | | 1`)).toEqual(['warning 9 dose-untested']);
  });

  it('names the first such dose, and the rows of the further ones', () => {
    const log = `${raisedLog}  2026-03-09 08:00 | | 1\n  2026-03-10 08:00 | | 1\n  2026-03-11 08:00 | | 1`;
    expect(foundBy(doseUntested, log)).toEqual(['warning 9 dose-untested']);
    expect(findingsBy(doseUntested, log)[0]).toMatchObject({ further: [10, 11] });
  });

  it.each([
    ['a dose a day, each in the row of its test', raisedLog],
    [
      'a day in parts after one test',
      'when | Cu | dose\n 2026-03-01 08:00 | 0 | 2\n 2026-03-01 11:00 | | 2\n 2026-03-01 14:00 | | 2\n 2026-03-01 20:00 | | 2\n 2026-03-02 08:00 | 0.4 | 2',
    ],
    ['doses before the first test', 'when | Cu | dose\n 2026-03-01 08:00 | | 2\n 2026-03-02 08:00 | 0.1 | 2'],
    [
      'a dose whose test stands in a later row of the same time',
      `${raisedLog}  2026-03-09 20:00 | | 1\n  2026-03-09 20:00 | 2.2 |`,
    ],
  ])('finds none in %s', (_, log) => {
    expect(foundBy(doseUntested, log)).toEqual([]);
  });
});
