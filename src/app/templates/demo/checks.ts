import type { SheetPlan } from './sheetPlan.js';

/** What must be known before copper is used, and whether this copy computes as published. */
export const checks: SheetPlan = {
  name: 'Checks',
  widths: [552, 100, 100, 70, 548],
  rows: 130,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['Read this before any copper, and see that this copy computes as published']] },
    { at: 'A3', cells: [['=QT.CAUTIONS()']] },
    { at: 'A23', cells: [['Published values, recomputed in place']] },
    { at: 'A24', cells: [['Values that disagree', '=COUNTIF(D26:D120,FALSE)']] },
    { at: 'A25', cells: [['=QT.SELFCHECK()']] },
  ],
  looks: [
    { range: 'A1:E1', look: 'title' },
    { range: 'A3:E3', look: 'heading' },
    { range: 'A4:A21', look: 'spill' },
    { range: 'A23:E23', look: 'section' },
    { range: 'A24', look: 'label' },
    { range: 'B24', look: 'answer' },
    { range: 'A25', look: 'heading' },
    { range: 'B25:C25', look: 'numberHeading' },
    { range: 'D25:E25', look: 'heading' },
    { range: 'A26:E120', look: 'wrapped' },
  ],
  formats: [
    { range: 'B24', format: '0' },
    { range: 'B26:C120', format: '#,##0.0####' },
  ],
  merged: [],
};
