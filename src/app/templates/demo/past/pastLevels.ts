import { answerTable, form, line, rows } from '../../plan/index.js';
import { demoSheet } from '../demoSheet.js';
import { pastLogAndCard } from './pastLog.js';

const level = { width: 90 };
const levels = answerTable({
  at: 'A4',
  id: 'LEVELS',
  given: pastLogAndCard,
  columns: { When: 140, Expected: level, Low: level, High: level, Reading: level, 'Off by': level },
  room: 130,
});
const beside = levels.lastColumn + 2;

/** The level of the past treatment by mass balance, beside each reading. */
export const pastLevels = demoSheet({
  name: 'Past levels',
  title: 'The level by mass balance: what doses, water changes and loss make of it, in mg/L',
  gap: 22,
  frozenRows: 4,
  parts: [
    line('A2', 'One formula, in A4: a row for each test, dose and change. Low and High are a band of 95 %.', 'aside'),
    levels,
    line({ row: 3, column: beside }, 'From this table', 'heading', { columns: 3 }),
    form({
      at: { row: 4, column: beside },
      widths: [250, 90, 60],
      lines: {
        readings: ['Readings', '=COUNT({LEVELS.Reading})', '', '0'],
        highest: ['Highest level', '=MAX({LEVELS.Expected})', 'mg/L', '0.00'],
        reading: ['Reading most above what was expected', '=MAX({LEVELS.Off by})', 'mg/L', '0.00'],
        most: ['Reading most below', '=MIN({LEVELS.Off by})', 'mg/L', '0.00'],
      },
    }),
    rows({
      at: { row: 9, column: beside },
      cells: [
        ['Two rows at one time are before and after a dose or a water change.'],
        ['Expected is what the whole log implies; Off by is the reading minus it.'],
        ['Both doses of the evening of 7 January are in the water, and the'],
        ['change of 13 January takes the level below 1.95 mg/L.'],
      ],
      looks: ['aside'],
    }),
  ],
});
