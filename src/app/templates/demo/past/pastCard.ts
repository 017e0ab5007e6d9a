import type { PlanCell, SheetPlan } from '../sheetPlan.js';
import { pastLogRange } from './pastLog.js';
import { pastColumns } from './pastRows.js';

const card: readonly (readonly PlanCell[])[] = [
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
];
const first = 4;
const last = first + card.length - 1;
const headingsLast = first + pastColumns.length;

/** The card, as another sheet refers to it. */
export const pastCardRange = `'Past card'!A${first}:B${last}`;

/** The card of the past treatment, and how the card and the log's headings are understood. */
export const pastCard: SheetPlan = {
  name: 'Past card',
  widths: [140, 150, 40, 140, 150, 70, 150, 40, 140, 140, 70],
  rows: 60,
  frozenRows: 1,
  blocks: [
    {
      at: 'A1',
      cells: [['A past treatment at Lantern Quay Marine (invented), before it is audited: is it understood?']],
    },
    { at: 'A3', cells: [['The card, as the keeper wrote it']] },
    { at: `A${first}`, cells: card },
    { at: 'D3', cells: [['How the card is understood']] },
    { at: `D${first}`, cells: [[`=QT.CARD(A${first}:B${last})`]] },
    { at: 'I3', cells: [['How the headings of the sheet Past log are']] },
    { at: `I${first}`, cells: [[`=QT.HEADINGS(${pastLogRange})`]] },
    {
      at: `A${last + 3}`,
      cells: [
        ['What is unknown is left out of every answer. Gallons are US gallons unless the card says imperial;'],
        ['degrees Fahrenheit and specific gravity are turned into °C and g/kg.'],
      ],
    },
  ],
  looks: [
    { range: 'A1:K1', look: 'title' },
    { range: 'A3:B3', look: 'section' },
    { range: 'D3:G3', look: 'section' },
    { range: 'I3:K3', look: 'section' },
    { range: `A${first}:A${last}`, look: 'label' },
    { range: `B${first}:B${last}`, look: 'input' },
    { range: `A${last + 3}:A${last + 4}`, look: 'note' },
    { range: `D${first}:G${first}`, look: 'heading' },
    { range: `D${first + 1}:G${last + 1}`, look: 'log' },
    { range: `I${first}:K${first}`, look: 'heading' },
    { range: `I${first + 1}:K${headingsLast}`, look: 'log' },
  ],
  formats: [{ range: `E${first + 1}:E${last + 1}`, format: '0.00' }],
  merged: [],
};
