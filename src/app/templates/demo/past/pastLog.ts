import type { SheetPlan } from '../sheetPlan.js';
import { pastColumns, pastRows } from './pastRows.js';

const lastRow = 70;

/** The log with its headings, as another sheet refers to it. */
export const pastLogRange = `'Past log'!A1:P${lastRow}`;

/** A treatment that is over, in a keeper's own words and units. It begins in row 1, so a row named in a message is its row. */
export const pastLog: SheetPlan = {
  name: 'Past log',
  widths: pastColumns.map(([, width]) => width),
  rows: lastRow + 20,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [pastColumns.map(([heading]) => heading)] },
    { at: 'A2', cells: pastRows },
  ],
  looks: [
    { range: 'A1:B1', look: 'heading' },
    { range: 'C1:H1', look: 'numberHeading' },
    { range: 'I1:L1', look: 'heading' },
    { range: 'M1', look: 'numberHeading' },
    { range: 'N1:P1', look: 'heading' },
    { range: `A2:P${lastRow}`, look: 'log' },
  ],
  formats: [
    { range: `A2:A${lastRow}`, format: 'yyyy-mm-dd' },
    { range: `C2:C${lastRow}`, format: '0.00' },
    { range: `D2:E${lastRow}`, format: '0.0' },
    { range: `F2:F${lastRow}`, format: '0.000' },
    { range: `G2:G${lastRow}`, format: '0.0' },
    { range: `H2:H${lastRow}`, format: '0.00' },
  ],
  merged: [],
};
