import type { SheetPlan } from '../templatePlan.js';
import { cardEntries } from '../sheets/cardEntries.js';
import { tankHeadings } from './tankLogRows.js';

const heading = 5;
const first = heading + 1;
/** Room for rows and columns that a keeper adds. */
const lastOfCard = heading + cardEntries.length + 12;
const lastOfLog = heading + tankHeadings.length + 15;

/** Whether card and headings are understood as they were meant. */
export const tankCheck: SheetPlan = {
  name: 'Check',
  tab: 'answer',
  widths: [26, 32, 10, 18, 3, 22, 18, 10],
  heights: [
    { rows: [1, 1], height: 28 },
    { rows: [heading, heading], height: 20 },
  ],
  frozen: { rows: heading },
  blocks: [
    { at: 'A1', cells: [['Are the card and the log understood?']] },
    {
      at: 'A2',
      cells: [
        ['Look here when a name on the card or a heading of the log was changed: what is not known is not counted.'],
      ],
    },
    { at: `A${heading - 1}`, cells: [['The card']] },
    { at: `A${heading}`, cells: [['=QT.CARD(Card)']] },
    { at: `F${heading - 1}`, cells: [['The headings of the log']] },
    { at: `F${heading}`, cells: [['=QT.HEADINGS(Log[#All])']] },
  ],
  looks: [
    { range: 'A1:H1', look: 'title' },
    { range: 'A2:H2', look: 'note' },
    { range: `A${heading - 1}:D${heading - 1}`, look: 'section' },
    { range: `F${heading - 1}:H${heading - 1}`, look: 'section' },
    { range: `A${heading}:D${heading}`, look: 'heading' },
    { range: `F${heading}:H${heading}`, look: 'heading' },
    { range: `A${first}:D${lastOfCard}`, look: 'spill' },
    { range: `F${first}:H${lastOfLog}`, look: 'spill' },
  ],
  formats: [],
  merged: ['A2:H2'],
  conditions: [
    {
      range: `A${first}:D${lastOfCard}`,
      rules: [
        { when: `AND($A${first}<>"",LEFT($D${first},7)="unknown")`, tone: 'guard' },
        { when: `$A${first}<>""`, tone: 'row' },
      ],
    },
    {
      range: `F${first}:H${lastOfLog}`,
      rules: [
        { when: `AND($F${first}<>"",LEFT($G${first},7)="unknown")`, tone: 'guard' },
        { when: `$F${first}<>""`, tone: 'row' },
      ],
    },
  ],
  page: { orientation: 'landscape' },
};
