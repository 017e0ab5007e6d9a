import type { SheetPlan } from './sheetPlan.js';

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
const firstRow = 5;
/** Room for the names of a longer list. */
const lastRow = 40;

/** What is known of each fish of a list and copper. */
export const fishList: SheetPlan = {
  name: 'Fish',
  widths: [156, 14, 156, 88, 650, 306],
  rows: 60,
  frozenRows: 4,
  blocks: [
    {
      at: 'A1',
      cells: [['Which fish may go into copper? The delivery of 29 April 2026 to Lantern Quay Marine (invented)']],
    },
    {
      at: 'A2',
      cells: [
        [
          'One formula, in C4. Write or paste names into the blue cells; not listed says nothing for or against a fish: ask first.',
        ],
      ],
    },
    { at: 'A4', cells: [['Fish'], ...delivery.map((name) => [name])] },
    { at: 'C4', cells: [[`=QT.TOLERANCE(A4:A${lastRow})`]] },
  ],
  looks: [
    { range: 'A1:F1', look: 'title' },
    { range: 'A2', look: 'note' },
    { range: 'A4', look: 'heading' },
    { range: `A${firstRow}:A${lastRow}`, look: 'inputText' },
    { range: 'C4:F4', look: 'heading' },
    { range: `C${firstRow}:F${lastRow}`, look: 'wrapped' },
  ],
  formats: [],
  merged: [],
};
