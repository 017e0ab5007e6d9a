import type { SheetPlan } from '../sheetPlan.js';
import { pastCardRange } from './pastCard.js';
import { pastLogRange } from './pastLog.js';

const first = 4;
const last = first + 130;

/** The level of the past treatment by mass balance, beside each reading. */
export const pastLevels: SheetPlan = {
  name: 'Past levels',
  widths: [140, 90, 90, 90, 90, 90, 22, 250, 90, 60],
  rows: last + 20,
  frozenRows: first,
  blocks: [
    { at: 'A1', cells: [['The level by mass balance: what doses, water changes and loss make of it, in mg/L']] },
    {
      at: 'A2',
      cells: [['One formula, in A4: a row for each test, dose and change. Low and High are a band of 95 %.']],
    },
    { at: `A${first}`, cells: [[`=QT.LEVELS(${pastLogRange},${pastCardRange})`]] },
    { at: `H${first}`, cells: [['From this table', null, null]] },
    {
      at: `H${first + 1}`,
      cells: [
        ['Readings', `=COUNT(E${first + 1}:E${last})`, null],
        ['Highest level', `=MAX(B${first + 1}:B${last})`, 'mg/L'],
        ['Reading most above what was expected', `=MAX(F${first + 1}:F${last})`, 'mg/L'],
        ['Reading most below', `=MIN(F${first + 1}:F${last})`, 'mg/L'],
      ],
    },
    {
      at: `H${first + 6}`,
      cells: [
        ['Two rows at one time are before and after a dose or a water change.'],
        ['Expected is what the whole log leads to, Off by the reading less that.'],
        ['Both doses of the evening of 7 January are in the water, and the'],
        ['change of 13 January takes the level below 1.95 mg/L.'],
      ],
    },
  ],
  looks: [
    { range: 'A1:J1', look: 'title' },
    { range: 'A2', look: 'note' },
    { range: `A${first}`, look: 'heading' },
    { range: `B${first}:F${first}`, look: 'numberHeading' },
    { range: `A${first + 1}:F${last}`, look: 'spill' },
    { range: `H${first}:J${first}`, look: 'heading' },
    { range: `H${first + 1}:H${first + 4}`, look: 'label' },
    { range: `I${first + 1}:I${first + 4}`, look: 'answer' },
    { range: `J${first + 1}:J${first + 4}`, look: 'unit' },
    { range: `H${first + 6}:H${first + 9}`, look: 'note' },
  ],
  formats: [
    { range: `A${first + 1}:A${last}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `B${first + 1}:F${last}`, format: '0.00' },
    { range: `I${first + 1}`, format: '0' },
    { range: `I${first + 2}:I${first + 4}`, format: '0.00' },
  ],
  merged: [],
};
