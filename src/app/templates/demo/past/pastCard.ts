import { answerTable, form, line } from '../../plan/index.js';
import { demoSheet } from '../demoSheet.js';
import { pastColumns } from './pastRows.js';

/** As the keeper wrote it. */
const pastCardRows = [
  ['Tank', 'Hospital tank 1'],
  ['Net volume', '55 gal'],
  ['Copper', 'chelated copper'],
  ['Stock bottle', '10 mg/mL'],
  ['Meter good to', '0.05 ppm'],
  ['Days wanted', 30],
  ['Longest gap', '4 days'],
  ['Water temp', '77 F'],
  ['Salinity', '32 ppt'],
  ['pH', 8.1],
  ['Stand', 'left of the door'],
] as const;

const understood = answerTable({
  at: 'D4',
  id: 'CARD',
  given: '{card}',
  columns: {
    ...{ Name: 140, Value: { width: 150, format: '0.00' }, Unit: 70 },
    'Read as': 150,
  },
  room: pastCardRows.length,
  ruled: 'any',
});
const headings = answerTable({
  at: { row: understood.heading, column: understood.lastColumn + 2 },
  id: 'HEADINGS',
  given: '{Past log!log+}',
  columns: { Heading: 140, 'Read as': 140, Unit: 70 },
  room: pastColumns.length,
  ruled: 'any',
});

/** The card of the past treatment, and how the card and the log's headings are understood. */
export const pastCard = demoSheet({
  name: 'Past card',
  title: 'A past treatment at Lantern Quay Marine (invented), before it is audited: is it understood?',
  isLog: true,
  gap: 40,
  parts: [
    form({
      at: 'A3',
      title: 'The card, as the keeper wrote it',
      columns: 2,
      widths: [140, 150],
      key: 'card',
      lines: Object.fromEntries(pastCardRows.map(([label, given]) => [label, [label, given]])),
    }),
    line('D3', 'How the card is understood', 'section', { columns: understood.columns.size }),
    understood,
    line({ row: 2, column: headings.firstColumn }, 'How the headings of Past log are understood', 'section', {
      columns: headings.columns.size,
    }),
    headings,
    line(
      'A17',
      'What is unknown is left out of every answer. Gallons are US gallons unless the card says imperial;',
      'aside',
    ),
    line('A18', 'degrees Fahrenheit and specific gravity are converted to °C and g/kg.', 'aside'),
  ],
});
