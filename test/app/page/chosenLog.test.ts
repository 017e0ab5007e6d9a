import { chosenLog } from '../../../src/app/page/chosenLog.js';

const log = (sheet: string, firstRow: number, firstColumn = 0) => ({
  sheet,
  range: { firstRow, firstColumn, lastRow: firstRow + 9, lastColumn: firstColumn + 3 },
  systems: [],
});
const [upper, lower, other] = [log('Log', 0), log('Log', 20), log('Old', 0)];

describe('chosenLog', () => {
  it('is the one under the selection', () => {
    expect(chosenLog([upper, lower, other], { sheet: 'Log', row: 22, column: 1 }, upper)).toBe(lower);
  });

  it('is the only one of the sheet, wherever the selection stands', () => {
    expect(chosenLog([upper, other], { sheet: 'Old', row: 40, column: 9 }, upper)).toBe(other);
  });

  it('stays the same beside the logs of a sheet, and on a sheet without one', () => {
    expect(chosenLog([upper, lower], { sheet: 'Log', row: 50, column: 0 }, lower)).toBe(lower);
    expect(chosenLog([upper, other], { sheet: 'Card', row: 0, column: 0 }, other)).toBe(other);
  });

  it('is the first one where nothing else decides, and none where there is none', () => {
    expect(chosenLog([upper, other], { sheet: 'Card', row: 0, column: 0 }, undefined)).toBe(upper);
    expect(chosenLog([], { sheet: 'Card', row: 0, column: 0 }, upper)).toBeUndefined();
  });
});
