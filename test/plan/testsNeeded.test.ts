import { testsNeeded } from '../../src/plan/testsNeeded.js';

describe('testsNeeded', () => {
  it.each([
    [4, 30, 42], // 38 × 1.1 = 41.8
    [7, 30, 49], // 44 × 1.1 = 48.4
    [1, 30, 36], // 32 × 1.1 = 35.2
    [4, 22, 33], // 30 × 1.1 = 33, which binary arithmetic puts above 33
    [4, 13.5, 25], // 22 × 1.1 = 24.2
  ])('for %d days of raising and %d of hold is %d', (raisingDays, holdDays, tests) => {
    expect(testsNeeded({ raisingDays, holdDays })).toBe(tests);
  });
});
