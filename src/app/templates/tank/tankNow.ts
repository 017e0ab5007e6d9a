import type { PlanCell } from '../demo/sheetPlan.js';
import { asOf } from '../sheets/asOf.js';
import { rowsBelowTable } from '../sheets/rowsBelowTable.js';
import { doNowRows } from '../sheets/doNowRows.js';
import type { SheetPlan } from '../templatePlan.js';
import { cardCell } from './tankCard.js';

/** Times and readings with their heading, so that a row named in an answer is the row of the sheet Log. */
export const readings = 'Log[[#All],[Date and time]],Log[[#All],[Copper mg/L]]';
const form = cardCell('Form');
const [gap, confirm] = [cardCell('Longest gap h'), cardCell('Confirm')];
const accuracy = cardCell('Meter accuracy mg/L');
const noHold = '"no hold runs"';

/** Arguments of the hold after the band: up to a moment, or to a number of days. */
export const holdTerms = `AsOf,,${gap},${confirm}`;
export const endTerms = `${cardCell('Days')},,${gap},${confirm}`;

const at = { moment: 5, hold: 9, gates: 14, tasks: 17 } as const;
const tasks = doNowRows('=QT.DONOW(Log[#All],Card,AsOf)', at.tasks);

const lines: readonly PlanCell[][] = [
  ['Band of this copper', `=QT.BAND(${form})`, null, 'low and high limit, mg/L'],
  [
    'Unbroken days held',
    `=IFNA(QT.HOLDDAYS(${readings},${form},${holdTerms}),"not tested yet")`,
    null,
    'at most 36 hours are counted past the last test',
  ],
  [
    'Hold began',
    `=IFNA(QT.HOLDSTART(${readings},${form},${holdTerms}),${noHold})`,
    null,
    'the first reading in the band of the hold that runs',
  ],
  [
    'Days are full on',
    `=IFNA(QT.HOLDENDS(${readings},${form},${endTerms}),${noHold})`,
    null,
    'if every test until then is in the band, and a test then still is',
  ],
  [
    'Chance that it never dipped',
    `=IF(${accuracy}="","no accuracy on the card",IFNA(QT.HOLDCHANCE(${readings},${form},${accuracy},${cardCell('Meter percent')}),${noHold}))`,
    null,
    'given how good the meter is; it knows chance errors only, and is no promise',
  ],
  [
    'May the fish go?',
    '=LET(gates,QT.READY(Log[#All],Card,AsOf),INDEX(gates,ROWS(gates),1))',
    null,
    'the last row of the sheet Ready, where every gate has its reason',
  ],
];

/** Where the treatment stands at this moment, and what is due. */
export const tankNow: SheetPlan = {
  name: 'Now',
  tab: 'answer',
  widths: [34, 20, 14, 18, 72, 11],
  heights: [
    { rows: [1, 1], height: 28 },
    { rows: [2, 2], height: 36 },
    { rows: [at.moment, at.moment + 1], height: 18 },
    { rows: [at.hold, at.gates], height: 18 },
    ...tasks.heights,
  ],
  blocks: [
    { at: 'A1', cells: [['Now']] },
    { at: 'A2', cells: [[headline()]] },
    { at: `A${at.moment - 1}`, cells: [['The moment']] },
    {
      at: `A${at.moment}`,
      cells: [
        ['As of', asOf.formula, null, asOf.note],
        ['Rows', rowsBelowTable('A')],
      ],
    },
    { at: `A${at.hold - 1}`, cells: [['The hold']] },
    { at: `A${at.hold}`, cells: lines },
    ...tasks.blocks,
  ],
  looks: [
    { range: 'A1:F1', look: 'title' },
    { range: 'A2:F2', look: 'state' },
    ...[at.moment, at.hold].map((row) => ({ range: `A${row - 1}:F${row - 1}`, look: 'section' as const })),
    { range: `A${at.moment}:A${at.moment + 1}`, look: 'label' },
    { range: `B${at.moment}`, look: 'answer' },
    { range: `C${at.moment}:F${at.moment}`, look: 'remark' },
    { range: `B${at.moment + 1}:F${at.moment + 1}`, look: 'remark' },
    { range: `A${at.hold}:A${at.gates}`, look: 'label' },
    { range: `B${at.hold}:C${at.gates}`, look: 'answer' },
    { range: `D${at.hold}:F${at.gates}`, look: 'remark' },
    ...tasks.looks,
  ],
  formats: [
    { range: `B${at.moment}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `B${at.hold}:C${at.hold + 1}`, format: '0.00' },
    { range: `B${at.hold + 2}:B${at.hold + 3}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `B${at.hold + 4}`, format: '[>=0.995]"over 99%";0%' },
    ...tasks.formats,
  ],
  merged: ['A2:F2'],
  conditions: [
    { range: `B${at.moment + 1}`, rules: [{ when: `LEFT($B$${at.moment + 1},3)<>"all"`, tone: 'guard' }] },
    ...tasks.conditions,
  ],
  page: { orientation: 'landscape' },
};

function headline(): string {
  const held = `B${at.hold + 1}`;
  const [what, amount, unit] = ['A', 'B', 'C'].map((column) => `${column}${at.tasks + 1}`);
  const days = `"Held "&ROUND(${held},1)&" of "&${cardCell('Days')}&" days without a break"`;
  const next = `${what}&IF(ISNUMBER(${amount})," "&ROUND(${amount},1)&" "&${unit},"")`;
  return `=IF(ISNUMBER(${held}),IF(${held}>0,${days},"No hold is running"),"No reading yet")&". Next: "&${next}`;
}

export const asOfCell = `Now!$B$${at.moment}`;
export const bandCells = { low: `Now!$B$${at.hold}`, high: `Now!$C$${at.hold}` };
