import { keeperLogRows } from './keeperLogRows.js';
import { serialOf } from './serialOf.js';
import type { SheetPlan } from './sheetPlan.js';

/** The last row the answers look at: room for the days to come. */
const lastRow = 90;
const log = logColumns('');

/** Times and readings of the log, as the first two arguments of a formula; another sheet writes `"Log!"` before each. */
export function logColumns(sheet: '' | 'Log!'): string {
  return `${sheet}A1:A${lastRow},${sheet}B1:B${lastRow}`;
}

/** The log, and next to it the hold to date. The log begins in row 1, so a row named in a message is the row of the sheet. */
export const keeperLog: SheetPlan = {
  name: 'Log',
  widths: [128, 94, 112, 68, 266, 10, 152, 140, 70, 84, 132, 56],
  rows: 120,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['Date and time', 'Copper mg/L', 'Water change L', 'Dose mL', 'Notes']] },
    {
      at: 'A2',
      cells: keeperLogRows.map(([when, copper, change, dose, note]) => [
        serialOf(when),
        copper,
        change,
        dose,
        note === '' ? null : note,
      ]),
    },
    { at: 'G1', cells: [['Tank Q2 at Lantern Quay Marine, kept by Orla Venn (both invented)']] },
    {
      at: 'G2',
      cells: [
        ['Copper in this tank', 'chelated', 'write here "sulfate", "amine" or "chelated"'],
        ['Its band', '=QT.BAND(H2)', null, 'low and high limit, mg/L'],
        ['Hold to date', `=QT.HOLDDAYS(${log},H2)`, 'days without a break, to the last test'],
        ['Began', `=QT.HOLDSTART(${log},H2)`, 'the first reading in the band after the dip'],
        ['30 days are full on', `=QT.HOLDENDS(${log},H2,30)`, 'if it holds until then'],
      ],
    },
    { at: 'G8', cells: [['What a refusal looks like']] },
    {
      at: 'G9',
      cells: [['An error on purpose', `=QT.HOLDDAYS(${log},"ionic")`, 'select H9 and read the line below the sheet']],
    },
    { at: 'G11', cells: [['Every hold in this log']] },
    { at: 'G12', cells: [[`=QT.HOLDS(${log},H2)`]] },
    { at: 'G20', cells: [['The card of this tank, for the plot and the audit']] },
    {
      at: 'G21',
      cells: [
        ['Volume', '168 L', 'net, with sump and pipes'],
        ['Form', 'chelated', 'sulfate, amine or chelated'],
        ['Strength', '4 mg/mL', 'of the solution, from its label: see QT.STRENGTH'],
        ['Days', 30, 'unbroken, as wanted'],
      ],
    },
  ],
  looks: [
    { range: 'A1:E1', look: 'heading' },
    { range: 'B1:D1', look: 'numberHeading' },
    { range: `A2:E${lastRow}`, look: 'log' },
    { range: 'G1:L1', look: 'title' },
    { range: 'G2:G6', look: 'label' },
    { range: 'H2', look: 'input' },
    { range: 'H3:I3', look: 'answer' },
    { range: 'H4:H6', look: 'answer' },
    { range: 'I2', look: 'note' },
    { range: 'J3', look: 'note' },
    { range: 'I4:I6', look: 'note' },
    { range: 'G8:L8', look: 'section' },
    { range: 'G9', look: 'label' },
    { range: 'H9', look: 'refusal' },
    { range: 'I9', look: 'note' },
    { range: 'G11:L11', look: 'section' },
    { range: 'G12:L12', look: 'heading' },
    { range: 'I12', look: 'numberHeading' },
    { range: 'L12', look: 'numberHeading' },
    { range: 'G13:L18', look: 'spill' },
    { range: 'G20:L20', look: 'section' },
    { range: 'G21:G24', look: 'label' },
    { range: 'H21:H24', look: 'inputText' },
    { range: 'I21:I24', look: 'note' },
  ],
  formats: [
    { range: `A2:A${lastRow}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `B2:B${lastRow}`, format: '0.00' },
    { range: `C2:D${lastRow}`, format: '0.0' },
    { range: 'H3:I3', format: '0.00' },
    { range: 'H4', format: '0.00' },
    { range: 'H5:H6', format: 'yyyy-mm-dd hh:mm' },
    { range: 'G13:H18', format: 'yyyy-mm-dd hh:mm' },
    { range: 'I13:I18', format: '0.00' },
    { range: 'L13:L18', format: '0' },
  ],
  merged: [],
};
