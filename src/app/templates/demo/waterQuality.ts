import type { SheetPlan } from './sheetPlan.js';

const acidities = [7.8, 7.9, 8, 8.1, 8.2, 8.3, 8.4];
const firstAcidity = 6;
const salinities = [25, 27, 29, 31, 33, 35];
const firstSalinity = 24;

/** Ammonia and salinity beside the copper. */
export const waterQuality: SheetPlan = {
  name: 'Water quality',
  widths: [290, 96, 70, 24, 112, 200, 190, 190, 186],
  rows: 60,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['Ammonia and salinity, tank Q2: fill in the blue cells, the answers are in bold']] },
    {
      at: 'A3',
      cells: [
        ['1  Un-ionised ammonia', null, null],
        ['Total ammonia, by a test', 0.5, 'mg/L'],
        ['The test counts it as', 'NH3', null],
        ['pH', 8.1, null],
        ['Temperature', 25.5, '°C'],
        ['Salinity', 33, 'g/kg'],
        ['Un-ionised ammonia, NH₃', '=QT.FREEAMMONIA(B4,B6,B7,B8,B5)', 'mg/L'],
        ['Liquid ammonia tests read falsely positive in copper-treated water. An in-tank indicator still works.'],
        [null],
        ['0.02 mg/L is a note, 0.05 a warning, 0.10 danger (common practice).'],
      ],
    },
    { at: 'E3', cells: [['The same total ammonia and salinity in other water, mg/L NH₃']] },
    {
      at: 'E4',
      cells: [
        ['pH', 'Temperature, °C', null, null],
        [null, 24, 26, 28],
        ...acidities.map((acidity, i) => {
          const row = firstAcidity + i;
          return [acidity, ...['F', 'G', 'H'].map((column) => `=QT.FREEAMMONIA($B$4,$E${row},${column}$5,$B$8,$B$5)`)];
        }),
      ],
    },
    {
      at: 'A15',
      cells: [
        ['2  Diluting ammonia without losing the hold', null, null],
        ['Net volume', 168, 'L'],
        ['Ammonia now', 0.5, 'mg/L'],
        ['Ammonia wanted', 0.25, 'mg/L'],
        ['Copper now, by a test', 2.2, 'mg/L'],
        ['Strength of the solution', 4, 'mg/mL'],
      ],
    },
    { at: 'E15', cells: [['The change that does it']] },
    { at: 'E16', cells: [['=QT.AMMONIACHANGE(B16,B17,B18,B19,B20)']] },
    {
      at: 'E18',
      cells: [['Never an ammonia binder: it sets copper free from amine and chelated products and can kill in hours.']],
    },
    {
      at: 'A22',
      cells: [
        ['3  Salinity from the hydrometer', null, null],
        ['Specific gravity, as read', 1.0247, null],
        ['Temperature of the sample', 25.5, '°C'],
        ['Compared with pure water at', 25, '°C'],
        ['Salinity', '=QT.SALINITY(B23,B24,B25)', 'g/kg'],
      ],
    },
    {
      at: 'A28',
      cells: [
        ['4  What the hydrometer should read', null, null],
        ['Salinity wanted', 33, 'g/kg'],
        ['Specific gravity', '=QT.SPECIFICGRAVITY(B29,B24,B25)', null],
      ],
    },
    { at: 'E22', cells: [['Specific gravity to mix to, by the hydrometer of part 3']] },
    {
      at: 'E23',
      cells: [
        ['Salinity, g/kg', 'at 20 °C', 'at 25 °C', 'at 28 °C'],
        ...salinities.map((salinity, i) => {
          const row = firstSalinity + i;
          return [salinity, ...[20, 25, 28].map((celsius) => `=QT.SPECIFICGRAVITY(E${row},${celsius},$B$25)`)];
        }),
      ],
    },
    {
      at: 'E31',
      cells: [
        ['Copper in water below 25 g/kg is a warning: the course of Zec and others (2021) kept 25 g/L and over.'],
      ],
    },
  ],
  looks: [
    { range: 'A1:I1', look: 'title' },
    ...['A3:C3', 'E3:I3', 'A15:C15', 'E15:I15', 'A22:C22', 'A28:C28', 'E22:I22'].map((range) => ({
      range,
      look: 'section' as const,
    })),
    ...['A4:A9', 'A16:A20', 'A23:A26', 'A29:A30'].map((range) => ({ range, look: 'label' as const })),
    { range: 'C4:C9', look: 'unit' },
    { range: 'C16:C30', look: 'unit' },
    ...['B4:B8', 'B16:B20', 'B23:B25', 'B29', 'E6:E12', 'F5:H5', 'E24:E29'].map((range) => ({
      range,
      look: 'input' as const,
    })),
    ...['B9', 'B26', 'B30', 'F6:H12', 'F24:H29'].map((range) => ({ range, look: 'answer' as const })),
    { range: 'A10:C11', look: 'warning' },
    { range: 'A12:C13', look: 'caption' },
    { range: 'E4', look: 'numberHeading' },
    { range: 'F4:H4', look: 'heading' },
    { range: 'E5', look: 'numberHeading' },
    { range: 'E16:F16', look: 'numberHeading' },
    { range: 'E17:F17', look: 'spill' },
    { range: 'E18:I18', look: 'warning' },
    { range: 'E23:H23', look: 'numberHeading' },
    { range: 'E31', look: 'note' },
  ],
  formats: [
    { range: 'B4', format: '0.00' },
    { range: 'B6', format: '0.0' },
    { range: 'B7', format: '0.0' },
    { range: 'B9', format: '0.000' },
    { range: 'E6:E12', format: '0.0' },
    { range: 'F6:H12', format: '0.000' },
    { range: 'B17:B20', format: '0.00' },
    { range: 'E17:F17', format: '0.0' },
    { range: 'B23', format: '0.0000' },
    { range: 'B24', format: '0.0' },
    { range: 'B26', format: '0.0' },
    { range: 'B30', format: '0.0000' },
    { range: 'F24:H29', format: '0.0000' },
  ],
  merged: ['E18:I18', 'A10:C11', 'A12:C13', 'F4:H4'],
};
