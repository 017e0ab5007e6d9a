import type { SheetPlan } from '../sheetPlan.js';
import { pastCardRange } from './pastCard.js';
import { pastLogRange } from './pastLog.js';

const first = 4;
const last = first + 32;

/** The past treatment recomputed from its rows. */
export const pastAudit: SheetPlan = {
  name: 'Past audit',
  widths: [80, 132, 46, 560, 410, 164],
  rows: last + 20,
  frozenRows: first,
  blocks: [
    { at: 'A1', cells: [['The keeper counted thirty days. What the rows of the sheet Past log say']] },
    {
      at: 'A2',
      cells: [
        ['One formula, in A4. Row is the row of the sheet Past log; change a cell there and the audit is made anew.'],
      ],
    },
    { at: `A${first}`, cells: [[`=QT.AUDIT(${pastLogRange},${pastCardRange})`]] },
  ],
  looks: [
    { range: 'A1:F1', look: 'title' },
    { range: 'A2', look: 'note' },
    { range: `A${first}:B${first}`, look: 'heading' },
    { range: `C${first}`, look: 'numberHeading' },
    { range: `D${first}:F${first}`, look: 'heading' },
    { range: `A${first + 1}:F${last}`, look: 'wrapped' },
  ],
  formats: [
    { range: `B${first + 1}:B${last}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `C${first + 1}:C${last}`, format: '0' },
  ],
  merged: [],
};
