import { answerTable, bodies, form, line, table, type TableColumn } from '../../plan/index.js';
import { demoSheet } from '../demoSheet.js';
import { shopMoment } from './shopRows.js';
import { shopSystems } from './shopSystems.js';

const heading = 6;
/** With room for three systems more. */
const room = shopSystems.length + 3;

/** The columns of the cards; headings above words are right-aligned too, like the cells. */
export const shopCardColumns: readonly TableColumn[] = [
  { heading: 'System', kind: 'text', width: 64 },
  { heading: 'Volume L', kind: 'number', width: 80 },
  { heading: 'Form', kind: 'text', headingLook: 'numberHeading', width: 80 },
  { heading: 'Strength mg/mL', kind: 'number', width: 124 },
  { heading: 'Days', kind: 'number', width: 52 },
  { heading: 'Pace', kind: 'text', headingLook: 'numberHeading', width: 76 },
  { heading: 'Meter accuracy', kind: 'number', width: 124, format: '0.000' },
];

const standings = answerTable({
  at: { row: heading, column: 0 },
  id: 'SYSTEMS',
  given: '{Shop log!log+},{cards+},{asOf}',
  columns: { System: 64, 'Last test': 132, Copper: 72, Status: 74, 'Hold day': 74, 'Days left': 78, 'Do now': 236 },
  room,
  ruled: 'any',
});
const cards = table({
  at: { row: heading, column: standings.lastColumn + 2 },
  key: 'cards',
  columns: shopCardColumns,
  rows: shopSystems.map(({ name, volume, form: copper, strength, meter }) => [
    ...[name, volume, copper, strength, 30, 'gradual', meter],
  ]),
  room,
  body: bodies.given,
});
const storyAt = heading + room + 2;

/** How the whole shop stands at one moment, from the shared log and a card for each system. */
export const shopNow = demoSheet({
  name: 'Shop',
  title: 'Lantern Quay Marine (invented): twelve systems in one shared log',
  isLog: true,
  gap: 16,
  parts: [
    form({
      at: 'A3',
      looks: { beside: 'aside' },
      lines: {
        asOf: ['As of', shopMoment, 'the moment to look at; in real use, write =NOW() here', 'yyyy-mm-dd hh:mm'],
      },
    }),
    line('A5', 'How each system stands: one formula, in A7, over the sheet Shop log', 'section', {
      columns: standings.columns.size,
    }),
    standings,
    line({ row: 4, column: cards.firstColumn }, 'Cards', 'section', { columns: cards.columns.size }),
    cards,
    form({
      at: { row: storyAt, column: 0 },
      title: 'What happened in each system, planted into the log of a simulated tank',
      columns: cards.lastColumn + 1,
      looks: { given: 'cell' },
      lines: Object.fromEntries(shopSystems.map(({ name, story }) => [name, [name, story]])),
    }),
    line(
      { row: storyAt + shopSystems.length + 1, column: 1 },
      'To audit one of them, write its name on the sheet One system.',
      'aside',
    ),
  ],
});
