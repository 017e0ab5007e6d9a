import type { SheetPlan } from '../sheetPlan.js';
import { shopLogRange } from './shopLog.js';
import { shopMoment } from './shopRows.js';
import { shopSystems } from './shopSystems.js';

const headings = 7;
const first = headings + 1;
const last = headings + shopSystems.length;
/** Room for three systems more. */
const lastCard = last + 3;
const storyHeading = lastCard + 2;

/** The cards of all systems, a row each, as another sheet refers to them. */
export const shopCards = {
  headings: `Shop!I${headings}:O${headings}`,
  rows: `Shop!I${first}:O${lastCard}`,
  systems: `Shop!I${first}:I${lastCard}`,
};

/** How the whole shop stands at one moment, from the shared log and a card for each system. */
export const shopNow: SheetPlan = {
  name: 'Shop',
  widths: [64, 132, 72, 74, 74, 78, 236, 16, 64, 80, 80, 124, 52, 76, 124],
  rows: 60,
  frozenRows: 1,
  blocks: [
    { at: 'A1', cells: [['Lantern Quay Marine (invented): twelve systems in one shared log']] },
    { at: 'A3', cells: [['As of', shopMoment, 'the moment to look at; in use write =NOW() here']] },
    { at: 'A5', cells: [[`How each system stands: one formula, in A${headings}, over the sheet Shop log`]] },
    { at: `A${headings}`, cells: [[`=QT.SYSTEMS(${shopLogRange},I${headings}:O${lastCard},B3)`]] },
    { at: 'I5', cells: [['Cards']] },
    {
      at: `I${headings}`,
      cells: [
        ['System', 'Volume L', 'Form', 'Strength mg/mL', 'Days', 'Pace', 'Meter accuracy'],
        ...shopSystems.map(({ name, volume, form, strength, meter }) => [
          name,
          volume,
          form,
          strength,
          30,
          'gradual',
          meter,
        ]),
      ],
    },
    { at: `A${storyHeading}`, cells: [['What happened in each system, planted into the log of a simulated tank']] },
    {
      at: `A${storyHeading + 1}`,
      cells: [
        ...shopSystems.map(({ name, story }) => [name, story]),
        [null, 'To audit one of them, choose it on the sheet One system.'],
      ],
    },
  ],
  looks: [
    { range: 'A1:O1', look: 'title' },
    { range: 'A3', look: 'label' },
    { range: 'B3', look: 'input' },
    { range: 'C3', look: 'note' },
    { range: 'A5:G5', look: 'section' },
    { range: 'I5:O5', look: 'section' },
    { range: `A${headings}:B${headings}`, look: 'heading' },
    { range: `C${headings}`, look: 'numberHeading' },
    { range: `D${headings}`, look: 'heading' },
    { range: `E${headings}:F${headings}`, look: 'numberHeading' },
    { range: `G${headings}`, look: 'heading' },
    { range: `A${first}:G${lastCard}`, look: 'log' },
    { range: `I${headings}`, look: 'heading' },
    { range: `J${headings}:O${headings}`, look: 'numberHeading' },
    { range: `I${first}:O${lastCard}`, look: 'input' },
    { range: `A${storyHeading}:O${storyHeading}`, look: 'section' },
    { range: `A${storyHeading + 1}:A${storyHeading + shopSystems.length}`, look: 'label' },
    { range: `B${storyHeading + shopSystems.length + 1}`, look: 'note' },
  ],
  formats: [
    { range: 'B3', format: 'yyyy-mm-dd hh:mm' },
    { range: `B${first}:B${lastCard}`, format: 'yyyy-mm-dd hh:mm' },
    { range: `C${first}:C${lastCard}`, format: '0.00' },
    { range: `E${first}:E${lastCard}`, format: '0' },
    { range: `F${first}:F${lastCard}`, format: '0.0' },
    { range: `O${first}:O${lastCard}`, format: '0.000' },
  ],
  merged: [],
};
