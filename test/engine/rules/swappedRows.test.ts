import { swappedRows } from '../../../src/engine/rules/swappedRows.js';
import { foundBy, raisedLog } from './raisedLog.js';

describe('swappedRows', () => {
  it('finds two rows of a raise that were changed over, and is a danger as something was dosed', () => {
    const log = raisedLog.replace('| 1.12 ', '| x ').replace('| 0.56 ', '| 1.12 ').replace('| x ', '| 0.56 ');
    expect(foundBy(swappedRows, log)).toEqual(['danger 3 swapped-rows', 'danger 4 swapped-rows']);
  });

  it('finds them later in the raise', () => {
    const log = raisedLog.replace('| 1.12 ', '| x ').replace('| 1.68 ', '| 1.12 ').replace('| x ', '| 1.68 ');
    expect(foundBy(swappedRows, log)).toEqual(['danger 4 swapped-rows', 'danger 5 swapped-rows']);
  });

  it('is a warning where nothing was dosed on them', () => {
    const log = `${raisedLog}
      2026-03-08 08:00 | 1.79 |    | 40
      2026-03-08 20:00 | 2.24 |    |
      2026-03-09 08:00 | 1.8  |    |
      2026-03-10 08:00 | 1.8  |    |
    `;
    expect(foundBy(swappedRows, log)).toEqual(['warning 9 swapped-rows', 'warning 10 swapped-rows']);
  });

  it.each([
    ['a raise as it should be', ''],
    ['a dip that comes back', '  2026-03-08 08:00 | 1.8 |\n  2026-03-09 08:00 | 2.25 |'],
    ['two readings within the error of the meter', '  2026-03-08 08:00 | 2.28 |\n  2026-03-09 08:00 | 2.23 |'],
    ['a level that stays low', '  2026-03-08 08:00 | 1.8 |\n  2026-03-09 08:00 | 1.8 |'],
  ])('finds none in %s', (_, days) => {
    expect(foundBy(swappedRows, raisedLog + days)).toEqual([]);
  });
});
