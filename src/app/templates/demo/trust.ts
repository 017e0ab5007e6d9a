import { logColumns } from './keeperLog.js';
import type { SheetPlan } from './sheetPlan.js';

const meters = [0.05, 0.1, 0.2, 0.3];
const firstMeter = 11;
const chance = (accuracy: string, drift: string): string =>
  `=QT.HOLDCHANCE(${logColumns('Log!')},$B$4,${accuracy},$B$6,${drift})`;

/** What a meter can show of the band, and how likely the hold is whole. */
export const trust: SheetPlan = {
  name: 'Trust',
  widths: [262, 104, 104, 22, 124, 124, 124, 124, 124, 250],
  rows: 40,
  frozenRows: 1,
  blocks: [
    {
      at: 'A1',
      cells: [['How far to trust the readings: fill in the blue cells, the answers are in bold']],
    },
    {
      at: 'A3',
      cells: [
        ['1  The meter', null, null],
        ['Copper in the tank', 'chelated', null],
        ['Good to ±', 0.1, 'mg/L'],
        ['and this much of the reading', 0.05, null],
        ['Reads from', 0, 'mg/L'],
        ['to', 5, 'mg/L'],
        ['Reading to keep', '=QT.AIM(B4,B5,B6)', 'mg/L'],
      ],
    },
    { at: 'E3', cells: [['What it can show of the band']] },
    { at: 'E4', cells: [['=QT.METERFITS(B4,B7,B8,B5,B6)']] },
    {
      at: 'A11',
      cells: [
        ['2  The hold of tank Q2, from the sheet Log', null, null],
        ['Held without a break', `=QT.HOLDDAYS(${logColumns('Log!')},B4)`, 'days'],
        ['Chance that it never was below the band', `=QT.HOLDCHANCE(${logColumns('Log!')},B4,B5,B6)`, null],
        ['A chance, not a promise: it knows chance errors only, not a meter that is always wrong the same way.'],
      ],
    },
    { at: 'E8', cells: [['The same hold with a better or a worse meter, and a level that wanders more']] },
    {
      at: 'E9',
      cells: [
        ['Meter good to ±', 'Reading to keep', 'Chance, if the level wanders in a day by, mg/L', null, null],
        ['mg/L', 'mg/L', 0.02, 0.05, 0.1],
        ...meters.map((accuracy, i) => {
          const row = firstMeter + i;
          return [
            accuracy,
            `=QT.AIM($B$4,E${row},$B$6)`,
            ...['G$10', 'H$10', 'I$10'].map((drift) => chance(`$E${row}`, drift)),
          ];
        }),
      ],
    },
    {
      at: 'A17',
      cells: [
        ['3  A second meter: it reads from 0.21', null, null],
        ['Band of copper sulfate, low and high', 0.15, 0.2],
        ['Good to ±', 0.02, 'mg/L'],
        ['Reads from', 0.21, 'mg/L'],
        ['to', 5, 'mg/L'],
      ],
    },
    { at: 'E17', cells: [['What it can show of the band']] },
    { at: 'E18', cells: [['=QT.METERFITS(B18:C18,B20,B21,B19)']] },
    {
      at: 'E20',
      cells: [['Inside this band it reads nothing: no hold can be shown with it. Take a test with a lower range.']],
    },
  ],
  looks: [
    { range: 'A1:J1', look: 'title' },
    ...['A3:C3', 'E3:J3', 'A11:C11', 'E8:J8', 'A17:C17', 'E17:J17'].map((range) => ({
      range,
      look: 'section' as const,
    })),
    ...['A4:A9', 'A12:A13', 'A18:A21'].map((range) => ({ range, look: 'label' as const })),
    { range: 'C4:C21', look: 'unit' },
    ...['B4:B8', 'B18:C18', 'B19:B21', 'E11:E14', 'G10:I10'].map((range) => ({
      range,
      look: 'input' as const,
    })),
    ...['B9', 'B12:B13', 'F11:I14'].map((range) => ({ range, look: 'answer' as const })),
    { range: 'A14:C15', look: 'caption' },
    { range: 'E4:F4', look: 'heading' },
    { range: 'G4', look: 'numberHeading' },
    { range: 'H4:J4', look: 'heading' },
    { range: 'E5:J5', look: 'spill' },
    { range: 'E9:F10', look: 'numberHeading' },
    { range: 'G9:I9', look: 'heading' },
    { range: 'E18:F18', look: 'heading' },
    { range: 'G18', look: 'numberHeading' },
    { range: 'H18:J18', look: 'heading' },
    { range: 'E19:J19', look: 'spill' },
    { range: 'E20', look: 'note' },
  ],
  formats: [
    { range: 'B5', format: '0.00' },
    { range: 'B6', format: '0%' },
    { range: 'B7:B8', format: '0.00' },
    { range: 'B9', format: '0.000' },
    { range: 'G5', format: '0.000' },
    { range: 'B12', format: '0.00' },
    { range: 'B13', format: '[>=0.995]"over 99%";0%' },
    { range: 'E11:E14', format: '0.00' },
    { range: 'F11:F14', format: '0.000' },
    { range: 'G10:I10', format: '0.00' },
    { range: 'G11:I14', format: '[>=0.995]"over 99%";0%' },
    { range: 'B18:C18', format: '0.00' },
    { range: 'B19:B21', format: '0.00' },
    { range: 'G19', format: '0.000' },
  ],
  merged: ['A14:C15', 'G9:I9'],
};
