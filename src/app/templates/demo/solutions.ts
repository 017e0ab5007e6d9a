import type { SheetPlan } from './sheetPlan.js';

/** One quantity, as it stands in people's logs. */
const written = ['2.05', '2,05 ppm', '~2.1', '2.15 mg/L', '2250 ug/L', '2100 ppb', '1.05 x2', '2.0-2.25', '2.1 ?'];
const firstWritten = 5;

/** Solutions made from the salt, thinned for a small tank, and readings as people write them. */
export const solutions: SheetPlan = {
  name: 'Solutions',
  widths: [262, 116, 70, 24, 180, 100, 24, 590],
  rows: 60,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['Solutions and readings: fill in the blue cells, the answers are in bold']] },
    {
      at: 'A3',
      cells: [
        ['1  A stock from the salt', null, null],
        ['Copper sulfate', 3, 'g'],
        ['made up to', 0.75, 'L'],
        ['Salt', 'pentahydrate', null],
        ['Strength, as copper', '=QT.STOCKSTRENGTH(B4,B5,B6)', 'mg/mL'],
      ],
    },
    {
      at: 'A9',
      cells: [
        ['2  Salt for a stock', null, null],
        ['Strength wanted, as copper', 1, 'mg/mL'],
        ['made up to', 0.5, 'L'],
        ['Salt', 'pentahydrate', null],
        ['Copper sulfate', '=QT.STOCKGRAMS(B10,B11,B12)', 'g'],
      ],
    },
    {
      at: 'A15',
      cells: [
        ['3  A weaker solution for a small tank', null, null],
        ['Strength at hand', 4, 'mg/mL'],
        ['Strength wanted', 0.5, 'mg/mL'],
        ['To make', 200, 'mL'],
      ],
    },
    { at: 'A20', cells: [['=QT.THIN(B16,B17,B18)']] },
    { at: 'E3', cells: [['4  Readings as they are written']] },
    {
      at: 'E4',
      cells: [['Written', 'mg/L'], ...written.map((text, i) => [text, `=QT.MGPERL(E${firstWritten + i})`])],
    },
    { at: 'H3', cells: [['Before you open the jar']] },
    {
      at: 'H4',
      cells: [
        ['Copper sulfate: harmful if swallowed, serious eye damage, very toxic to aquatic life.'],
        ['Gloves and goggles; away from children and food. Label the bottle with its strength.'],
        ['"pentahydrate" is the blue salt; "anhydrous", the white, holds 1.56 times the copper.'],
        ['A label in mg of salt is not mg of copper: a gram of the blue salt holds 0.25 g of copper.'],
        ['Of a range the low end counts; "x2" is a sample diluted to twice its volume.'],
      ],
    },
  ],
  looks: [
    { range: 'A1:H1', look: 'title' },
    ...['A3:C3', 'A9:C9', 'A15:C15', 'E3:F3', 'H3'].map((range) => ({ range, look: 'section' as const })),
    ...['A4:A7', 'A10:A13', 'A16:A18'].map((range) => ({ range, look: 'label' as const })),
    { range: 'C4:C18', look: 'unit' },
    ...['B4:B6', 'B10:B12', 'B16:B18', 'E5:E13'].map((range) => ({ range, look: 'input' as const })),
    ...['B7', 'B13', 'F5:F13'].map((range) => ({ range, look: 'answer' as const })),
    { range: 'A20:B20', look: 'numberHeading' },
    { range: 'A21:B21', look: 'spill' },
    { range: 'E4:F4', look: 'numberHeading' },
    { range: 'H4', look: 'warning' },
    { range: 'H5:H8', look: 'note' },
  ],
  formats: [
    { range: 'B5', format: '0.00' },
    { range: 'B7', format: '0.000' },
    { range: 'B10:B11', format: '0.00' },
    { range: 'B13', format: '0.00' },
    { range: 'B16:B17', format: '0.00' },
    { range: 'A21:B21', format: '0.0' },
    { range: 'F5:F13', format: '0.00' },
  ],
  merged: [],
};
