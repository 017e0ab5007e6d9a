import { serialOf } from '../serialOf.js';
import type { SheetPlan } from '../sheetPlan.js';
import { pastCardRange } from './pastCard.js';
import { pastLogRange } from './pastLog.js';

const headings = 6;
const last = headings + 9;

/** What was to be done on the morning on which the keeper took the copper out, and which gates were met. */
export const pastSteps: SheetPlan = {
  name: 'Past steps',
  widths: [120, 66, 74, 128, 278, 16, 136, 60, 128, 374],
  rows: 60,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['The past treatment at one moment: what to do, and may the fish go?']] },
    {
      at: 'A3',
      cells: [
        [
          'As of',
          null,
          null,
          serialOf('2026-02-08 07:30'),
          'the morning after day 30 by the keeper’s count; in use write =NOW()',
        ],
      ],
    },
    { at: `A${headings - 1}`, cells: [['What to do']] },
    { at: `A${headings}`, cells: [[`=QT.DONOW(${pastLogRange},${pastCardRange},D3)`]] },
    { at: `G${headings - 1}`, cells: [['May the fish go?']] },
    { at: `G${headings}`, cells: [[`=QT.READY(${pastLogRange},${pastCardRange},D3)`]] },
  ],
  looks: [
    { range: 'A1:J1', look: 'title' },
    { range: 'A3:C3', look: 'label' },
    { range: 'D3', look: 'input' },
    { range: 'E3', look: 'note' },
    { range: `A${headings - 1}:E${headings - 1}`, look: 'section' },
    { range: `G${headings - 1}:J${headings - 1}`, look: 'section' },
    { range: `A${headings}`, look: 'heading' },
    { range: `B${headings}`, look: 'numberHeading' },
    { range: `C${headings}:E${headings}`, look: 'heading' },
    { range: `A${headings + 1}:E${last}`, look: 'wrapped' },
    { range: `G${headings}:J${headings}`, look: 'heading' },
    { range: `G${headings + 1}:J${last}`, look: 'wrapped' },
  ],
  formats: [
    { range: 'D3', format: 'yyyy-mm-dd hh:mm' },
    { range: `B${headings + 1}:B${last}`, format: '0.0' },
    { range: `D${headings + 1}:D${last}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `I${headings + 1}:I${last}`, format: 'yyyy-mm-dd hh:mm' },
  ],
  merged: [],
};
