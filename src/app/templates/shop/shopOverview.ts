import type { ChartPlan } from '../chartPlan.js';
import type { PlanCell } from '../demo/sheetPlan.js';
import { asOf } from '../sheets/asOf.js';
import { rowsBelowTable } from '../sheets/rowsBelowTable.js';
import { standing } from '../sheets/standing.js';
import type { SheetPlan } from '../templatePlan.js';

const heading = 10;
const first = heading + 1;
const rows = 16;
const last = heading + rows;
/** As many systems as the chart has room for. */
const drawn = 8;

/** An untested stretch is noted from 36 h on and warned of from 72 h on (common practice). */
const age = (row: number): readonly PlanCell[] => [
  `=IF(ISNUMBER(B${row}),(AsOf-B${row})*24,"")`,
  `=IF(ISNUMBER(H${row}),IF(H${row}>72,"overdue",IF(H${row}>36,"due","in time")),"")`,
];

const daysLeft: ChartPlan = {
  at: 'E3',
  kind: 'columns',
  size: { width: 636, height: 218 },
  name: 'Days left',
  title: `Days left of the hold, the first ${drawn} systems`,
  alt: `A column for each of the first ${drawn} systems, as high as the days left of its hold. A system without a hold has none. The values stand in the column Days left of the table.`,
  across: { title: 'System', format: 'General' },
  up: { title: 'Days left', format: '0', from: 0 },
  series: [
    {
      name: `Overview!$F$${heading}`,
      across: `Overview!$A$${first}:$A$${heading + drawn}`,
      up: `Overview!$F$${first}:$F$${heading + drawn}`,
      draws: 'columns',
    },
  ],
};

export const asOfCell = 'Overview!$B$4';
/** The answer of `QT.SYSTEMS`, read by cell functions alone. */
export const standings = {
  systems: `Overview!$A$${first}:$A$${last}`,
  all: `Overview!$A$${first}:$G$${last}`,
  headings: `Overview!$A$${heading}:$G$${heading}`,
};

/** How every system stands, and what each needs now. */
export const shopOverview: SheetPlan = {
  name: 'Overview',
  tab: 'answer',
  widths: [18, 19, 11, 12, 10, 10, 38, 12, 12],
  heights: [
    { rows: [1, 1], height: 28 },
    { rows: [3, 3], height: 18 },
    { rows: [4, 8], height: 34 },
    { rows: [heading, heading], height: 22 },
    { rows: [first, last], height: 20 },
  ],
  blocks: [
    { at: 'A1', cells: [['How every system stands']] },
    { at: 'A3', cells: [['The moment']] },
    {
      at: 'A4',
      cells: [
        ['As of', asOf.formula],
        [asOf.note],
        [rowsBelowTable('B')],
        [
          'Without a system',
          '=COUNT(Log[Date and time])-SUMPRODUCT((Log[System]<>"")*ISNUMBER(Log[Date and time]))',
          'rows, which no answer counts',
        ],
      ],
    },
    { at: `A${heading - 1}`, cells: [['One formula; a system stands here if it has a card or rows in the log']] },
    { at: `A${heading}`, cells: [['=QT.SYSTEMS(Log[#All],Cards[#All],AsOf)']] },
    { at: `H${heading}`, cells: [['Hours since', 'Test']] },
    { at: `H${first}`, cells: Array.from({ length: rows }, (_, i) => age(first + i)) },
  ],
  looks: [
    { range: 'A1:I1', look: 'title' },
    { range: 'A3:D3', look: 'section' },
    { range: 'A4:D7', look: 'explained' },
    { range: 'A4', look: 'label' },
    { range: 'B4', look: 'answer' },
    { range: 'A7', look: 'label' },
    { range: 'B7', look: 'answer' },
    { range: 'C7:D7', look: 'remark' },
    { range: `A${heading - 1}:I${heading - 1}`, look: 'section' },
    { range: `A${heading}:I${heading}`, look: 'heading' },
    { range: `C${heading}`, look: 'numberHeading' },
    { range: `E${heading}:F${heading}`, look: 'numberHeading' },
    { range: `H${heading}`, look: 'numberHeading' },
    { range: `A${first}:I${last}`, look: 'spill' },
    { range: `A${first}:A${last}`, look: 'spillName' },
    { range: `C${first}:C${last}`, look: 'spillNumber' },
    { range: `E${first}:F${last}`, look: 'spillNumber' },
    { range: `H${first}:H${last}`, look: 'spillNumber' },
  ],
  formats: [
    { range: 'B4', format: 'yyyy-mm-dd hh:mm' },
    { range: 'B7', format: '0' },
    { range: `B${first}:B${last}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `C${first}:C${last}`, format: '0.00' },
    { range: `E${first}:E${last}`, format: '0' },
    { range: `F${first}:F${last}`, format: '0.0' },
    { range: `H${first}:H${last}`, format: '0' },
  ],
  merged: ['A5:D5', 'A6:D6'],
  conditions: [
    { range: 'A6:D6', rules: [{ when: 'LEFT($A$6,3)<>"all"', tone: 'guard' }] },
    { range: 'A7:D7', rules: [{ when: '$B$7>0', tone: 'guard' }] },
    standing('D', first, last),
    {
      range: `I${first}:I${last}`,
      rules: [
        { when: `$I${first}="due"`, tone: 'due' },
        { when: `$I${first}="overdue"`, tone: 'overdue' },
      ],
    },
    { range: `A${first}:I${last}`, rules: [{ when: `$A${first}<>""`, tone: 'row' }] },
  ],
  charts: [daysLeft],
  page: { orientation: 'landscape', onOnePage: true },
};
