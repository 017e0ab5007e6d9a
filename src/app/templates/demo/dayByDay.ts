import type { SheetPlan } from './sheetPlan.js';

/** A row for every reading of the log, in time order. */
export const dayByDay: SheetPlan = {
  name: 'Day by day',
  widths: [140, 84, 84, 84, 90, 64, 430],
  rows: 140,
  frozenRows: 3,
  blocks: [
    { at: 'A1', cells: [['Every reading of the log in time order, with its place in the hold']] },
    {
      at: 'A2',
      cells: [
        [
          'One formula, in A3. Row is the row of the sheet Log; of a range such as 2.1-2.2 the low end counts for the hold.',
        ],
      ],
    },
    { at: 'A3', cells: [['=QT.HOLDROWS(Log!A1:A90,Log!B1:B90,Log!H2)']] },
  ],
  looks: [
    { range: 'A1:G1', look: 'title' },
    { range: 'A2', look: 'note' },
    { range: 'A3:G3', look: 'heading' },
    { range: 'B3', look: 'numberHeading' },
    { range: 'D3:F3', look: 'numberHeading' },
    { range: 'A4:G95', look: 'spill' },
  ],
  formats: [
    { range: 'A4:A95', format: 'yyyy-mm-dd hh:mm' },
    { range: 'B4:B95', format: '0.00' },
    { range: 'D4:D95', format: '0' },
    { range: 'E4:E95', format: '0.00' },
    { range: 'F4:F95', format: '0' },
  ],
  merged: [],
};
