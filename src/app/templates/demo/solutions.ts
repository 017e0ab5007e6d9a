import { answerTable, bodies, form, line, rows, table } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';

/** One quantity, as it stands in people's logs. */
const written = ['2.05', '2,05 ppm', '~2.1', '2.15 mg/L', '2250 ug/L', '2100 ppb', '1.05 x2', '2.0-2.25', '2.1 ?'];

/** Solutions made from the salt, thinned for a small tank, and readings as people write them. */
export const solutions = demoSheet({
  name: 'Solutions',
  title: 'Solutions and readings: fill in the blue cells, the answers are in bold',
  widths: [262, 116, 70, 24, 180, 100, 24, 590],
  parts: [
    form({
      at: 'A3',
      title: '1  A stock from the salt',
      lines: {
        grams: ['Copper sulfate', 3, 'g'],
        made: ['made up to', 0.75, 'L', '0.00'],
        salt: ['Salt', 'pentahydrate'],
        as: ['Strength, as copper', '=QT.STOCKSTRENGTH({grams},{made},{salt})', 'mg/mL', '0.000'],
      },
    }),
    form({
      at: 'A9',
      title: '2  Salt for a stock',
      lines: {
        strength: ['Strength wanted, as copper', 1, 'mg/mL', '0.00'],
        litres: ['made up to', 0.5, 'L', '0.00'],
        'other salt': ['Salt', 'pentahydrate'],
        copper: ['Copper sulfate', '=QT.STOCKGRAMS({strength},{litres},{other salt})', 'g', '0.00'],
      },
    }),
    form({
      at: 'A15',
      title: '3  A weaker solution for a small tank',
      lines: {
        'at hand': ['Strength at hand', 4, 'mg/mL', '0.00'],
        wanted: ['Strength wanted', 0.5, 'mg/mL', '0.00'],
        'to make': ['To make', 200, 'mL'],
      },
    }),
    answerTable({ at: 'A20', id: 'THIN', given: '{at hand},{wanted},{to make}', room: 1 }),
    line('E3', '4  Readings as they are written', 'section', { columns: 2 }),
    table({
      at: 'E4',
      key: 'readings',
      columns: [
        { heading: 'Written', kind: 'number', look: 'inputNumber' },
        { heading: 'mg/L', kind: 'number', format: '0.00', formula: '=QT.MGPERL({Written})' },
      ],
      rows: written.map((text) => [text]),
      room: written.length,
      body: bodies.answer,
    }),
    line('H3', 'Before you open the jar', 'section'),
    line('H4', 'Copper sulfate: harmful if swallowed, serious eye damage, very toxic to aquatic life.', 'warning'),
    rows({
      at: 'H5',
      cells: [
        ['Gloves and goggles; away from children and food. Label the bottle with its strength.'],
        ['"pentahydrate" is the blue salt; "anhydrous", the white, holds 1.56 times the copper.'],
        ['A label in mg of salt is not mg of copper: a gram of the blue salt holds 0.25 g of copper.'],
        ['Of a range the low end counts; "x2" is a sample diluted to twice its volume.'],
      ],
      looks: ['aside'],
    }),
  ],
});
