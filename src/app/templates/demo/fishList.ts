import { answerTable, bodies, line, table } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';

/** The delivery as the shop wrote it: trade names, one invertebrate, one name misspelt, one not on any list. */
const delivery = [
  'Yellow tang',
  'Powder blue tang',
  'Clownfish',
  'Royal gramma',
  'Flame angelfish',
  'Emperor angelfish',
  'Copperband butterfly',
  'Lyretail anthias',
  'Six-line wrasse',
  'Leopard wrasse',
  'Blue chromis',
  'Banggai cardinal',
  'Lawnmower blenny',
  'Mandarin',
  'Snowflake moray',
  'Bamboo shark',
  'Cleaner shrimp',
  'Yelow tang',
  'Golden sweeper',
];
/** With room for the names of a longer list. */
const room = 36;

/** What is known of each fish of a list and copper. */
export const fishList = demoSheet({
  name: 'Fish',
  title: 'Which fish may go into copper? The delivery of 29 April 2026 to Lantern Quay Marine (invented)',
  gap: 14,
  frozenRows: 4,
  parts: [
    line(
      'A2',
      'One formula, in C4. Write or paste names into the blue cells; not listed says nothing for or against a fish: ask first.',
      'aside',
    ),
    table({
      at: 'A4',
      key: 'delivery',
      columns: [{ heading: 'Fish', kind: 'text', width: 156 }],
      rows: delivery.map((name) => [name]),
      room,
      body: bodies.givenText,
    }),
    answerTable({
      at: 'C4',
      id: 'TOLERANCE',
      given: '{delivery+}',
      columns: { Fish: 156, Advice: 88, Why: 650, Source: 306 },
      room,
      body: bodies.small,
      ruled: 'any',
    }),
  ],
});
