import { serialOf } from './serialOf.js';
import type { SheetPlan } from './sheetPlan.js';

/** A quarantine from screening to the end of observation, and how long to observe after one that is over. */
export const calendar: SheetPlan = {
  name: 'Calendar',
  widths: [132, 132, 632, 478],
  rows: 80,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['A quarantine day by day: fill in the blue cells']] },
    {
      at: 'A3',
      cells: [
        ['The next tank, Q4', null, null],
        ['First dose', serialOf('2026-05-02 09:00'), null],
        ['Copper', 'chelated', 'write "sulfate", "amine" or "chelated"'],
        ['Days of hold', 30, null],
        ['Pace', 'gradual', 'write "gradual", "sensitive", "urgent" or a number of days'],
        ['Other medicine', 'praziquantel', 'generic names, commas between them; or leave it empty'],
      ],
    },
    {
      at: 'A10',
      cells: [
        ['After copper, tank Q2', null, null],
        ['Copper out at', serialOf('2026-04-17 12:00'), 'by a test after the last change'],
        ['Median level', 2.15, 'mg/L, over the hold'],
        ['Observe at least to', 'Better to', null],
      ],
    },
    { at: 'A14', cells: [['=QT.OBSERVEUNTIL(B11,B12,"chelated")']] },
    {
      at: 'C14',
      cells: [['two to four weeks; four where a chelated hold was run low, under 2.10 mg/L (common practice)']],
    },
    { at: 'A16', cells: [['The plan for tank Q4, every step with its reason']] },
    { at: 'A17', cells: [['=QT.PLAN(B4,B5,B6,B7,B8)']] },
  ],
  looks: [
    { range: 'A1:D1', look: 'title' },
    { range: 'A3:D3', look: 'section' },
    { range: 'A10:D10', look: 'section' },
    { range: 'A4:A8', look: 'label' },
    { range: 'A11:A12', look: 'label' },
    { range: 'B4:B8', look: 'input' },
    { range: 'B11:B12', look: 'input' },
    { range: 'C4:C14', look: 'note' },
    { range: 'A13:B13', look: 'numberHeading' },
    { range: 'A14:B14', look: 'answer' },
    { range: 'A16:D16', look: 'section' },
    { range: 'A17', look: 'heading' },
    { range: 'B17', look: 'numberHeading' },
    { range: 'C17:D17', look: 'heading' },
    { range: 'A18:D46', look: 'wrapped' },
  ],
  formats: [
    { range: 'B4', format: 'yyyy-mm-dd hh:mm' },
    { range: 'B11', format: 'yyyy-mm-dd hh:mm' },
    { range: 'B12', format: '0.00' },
    { range: 'A14:B14', format: 'yyyy-mm-dd hh:mm' },
    { range: 'A18:A60', format: 'yyyy-mm-dd hh:mm' },
    { range: 'B18:B60', format: '0' },
  ],
  merged: [],
};
