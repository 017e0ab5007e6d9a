import type { SheetPlan } from '../sheetPlan.js';
import { shopLogRange, shopLogSystems, shopLogWidths } from './shopLog.js';

/** More rows than one system has in a treatment and the observation after it. */
const lastRow = 400;

/** The rows of the chosen system with their headings, as another sheet refers to them. */
export const systemRowsRange = `'System rows'!A1:N${lastRow}`;

/** The rows of one system, taken out of the shared log: one formula in A1. An empty cell stays empty and is not made 0. */
export const systemRows: SheetPlan = {
  name: 'System rows',
  widths: shopLogWidths,
  rows: lastRow + 20,
  frozenRows: 1,
  blocks: [
    {
      at: 'A1',
      cells: [
        [
          `=FILTER(IF(ISBLANK(${shopLogRange}),"",${shopLogRange}),` +
            `(${shopLogSystems}='One system'!B3)+(${shopLogSystems}="System"))`,
        ],
      ],
    },
  ],
  looks: [
    { range: 'A1:B1', look: 'heading' },
    { range: 'C1:H1', look: 'numberHeading' },
    { range: 'I1:J1', look: 'heading' },
    { range: 'K1', look: 'numberHeading' },
    { range: 'L1:N1', look: 'heading' },
    { range: `A2:N${lastRow}`, look: 'log' },
  ],
  formats: [
    { range: `B2:B${lastRow}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `C2:C${lastRow}`, format: '0.00' },
    { range: `D2:H${lastRow}`, format: '0.0' },
  ],
  merged: [],
};
