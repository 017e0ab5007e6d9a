import { hiddenLogs } from '../../../src/app/logs/hiddenLogs.js';
import { bookOf } from './bookOf.js';
import { cardRows, logRows } from './sampleRows.js';

describe('hiddenLogs', () => {
  const sheets = { Shown: [...cardRows, [], ...logRows(2)], Old: logRows(2), Lists: [['sulfate'], ['chelated']] };

  it('names hidden sheets with a log that are left out', () => {
    expect(hiddenLogs(bookOf(sheets, { hidden: ['Old', 'Lists'] }))).toEqual(['Old']);
  });

  it('names none where all sheets are shown, or where only hidden ones hold a log', () => {
    expect(hiddenLogs(bookOf(sheets))).toEqual([]);
    expect(hiddenLogs(bookOf({ Shown: [['x']], Old: logRows(2) }, { hidden: ['Old'] }))).toEqual([]);
  });
});
