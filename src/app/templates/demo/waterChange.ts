import type { SheetPlan } from './sheetPlan.js';

const litres = [10, 20, 30, 40, 50, 60, 80];
const firstRow = 5;

/** Changes that keep the level, lower it, or take the copper out; and what evaporation does. */
export const waterChange: SheetPlan = {
  name: 'Water changes',
  widths: [280, 96, 62, 24, 130, 130, 220, 220],
  rows: 60,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['Water changes, tank Q2: fill in the blue cells, the answers are in bold']] },
    {
      at: 'A3',
      cells: [
        ['The tank', null, null],
        ['Net volume', 168, 'L'],
        ['Level now, by a test', 2.2, 'mg/L'],
        ['Strength of the solution', 4, 'mg/mL'],
      ],
    },
    {
      at: 'A8',
      cells: [
        ['A change that keeps the level', null, null],
        ['Water to change', 30, 'L'],
        ['Copper into the new water first', '=QT.CHANGEDOSE(B9,B5,B6,B4)', 'mL'],
        ['Level after it, if that is forgotten', '=QT.AFTERCHANGE(B4,B5,B9,0)', 'mg/L'],
      ],
    },
    {
      at: 'A13',
      cells: [
        ['Evaporation', null, null],
        ['Water lost since the last top-off', 4, 'L'],
        ['Level before topping off', '=QT.AFTEREVAPORATION(B4,B5,B14)', 'mg/L'],
      ],
    },
    {
      at: 'A17',
      cells: [
        ['Lowering the level', null, null],
        ['Level wanted', 2, 'mg/L'],
        ['Copper-free water to change in one go', '=QT.CHANGETOLOWER(B4,B5,B18,0)', 'L'],
      ],
    },
    {
      at: 'A21',
      cells: [
        ['Taking the copper out, after the hold', null, null],
        ['Down to', 0.02, 'mg/L'],
        ['Changed each time', 0.3, null],
        ['Copper-free changes', '=QT.CHANGESTOCLEAR(B5,B22,B23)', null],
      ],
    },
    { at: 'E3', cells: [['One change of this size, in the tank on the left']] },
    {
      at: 'E4',
      cells: [
        ['Change, L', 'Of the tank', 'Copper for the new water, mL', 'Level after, if forgotten, mg/L'],
        ...litres.map((change, i) => {
          const row = firstRow + i;
          return [
            change,
            `=E${row}/$B$4`,
            `=QT.CHANGEDOSE(E${row},$B$5,$B$6,$B$4)`,
            `=QT.AFTERCHANGE($B$4,$B$5,E${row},0)`,
          ];
        }),
      ],
    },
    {
      at: 'E13',
      cells: [
        ['A reading below the band breaks the hold: back to day one. The band of chelated copper begins at 1.95 mg/L.'],
        ['Copper comes back off silicone and sand for weeks: test 48 hours and 7 days after the last change.'],
      ],
    },
  ],
  looks: [
    { range: 'A1:H1', look: 'title' },
    { range: 'A3:C3', look: 'section' },
    { range: 'A8:C8', look: 'section' },
    { range: 'A13:C13', look: 'section' },
    { range: 'A17:C17', look: 'section' },
    { range: 'A21:C21', look: 'section' },
    { range: 'E3:H3', look: 'section' },
    { range: 'A4:A6', look: 'label' },
    { range: 'A9:A11', look: 'label' },
    { range: 'A14:A15', look: 'label' },
    { range: 'A18:A19', look: 'label' },
    { range: 'A22:A24', look: 'label' },
    { range: 'C4:C24', look: 'unit' },
    { range: 'B4:B6', look: 'input' },
    { range: 'B9', look: 'input' },
    { range: 'B14', look: 'input' },
    { range: 'B18', look: 'input' },
    { range: 'B22:B23', look: 'input' },
    { range: 'B10:B11', look: 'answer' },
    { range: 'B15', look: 'answer' },
    { range: 'B19', look: 'answer' },
    { range: 'B24', look: 'answer' },
    { range: 'E4:H4', look: 'numberHeading' },
    { range: 'E5:E11', look: 'input' },
    { range: 'F5:F11', look: 'spill' },
    { range: 'G5:H11', look: 'answer' },
    { range: 'E13:E14', look: 'note' },
  ],
  formats: [
    { range: 'B5:B6', format: '0.00' },
    { range: 'B10', format: '0.0' },
    { range: 'B11', format: '0.00' },
    { range: 'B15', format: '0.00' },
    { range: 'B18', format: '0.00' },
    { range: 'B19', format: '0.0' },
    { range: 'B22', format: '0.00' },
    { range: 'B23', format: '0%' },
    { range: 'B24', format: '0' },
    { range: 'F5:F11', format: '0%' },
    { range: 'G5:G11', format: '0.0' },
    { range: 'H5:H11', format: '0.00' },
  ],
  merged: [],
};
