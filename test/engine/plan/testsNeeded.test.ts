import { testsNeeded } from '../../../src/engine/plan/testsNeeded.js';

describe('testsNeeded', () => {
  it.each([
    [4, 2, 30, 42], // 38 × 1.1 = 41.8
    [7, 2, 30, 49], // 44 × 1.1 = 48.4
    [1, 2, 30, 36], // 32 × 1.1 = 35.2
    [4, 2, 22, 33], // 30 × 1.1 = 33, which binary arithmetic puts above 33
    [4, 2, 13.5, 25], // 22 × 1.1 = 24.2
    [1, 4, 30, 38], // 34 × 1.1 = 37.4
  ])(
    'for %d days of raising with %d tests a day and %d of hold is %d',
    (raisingDays, testsADayRaising, holdDays, tests) => {
      expect(testsNeeded({ raisingDays, testsADayRaising, holdDays })).toBe(tests);
    },
  );
});
