import type { PlanCell } from '../demo/sheetPlan.js';
import { cardEntries } from '../sheets/cardEntries.js';
import type { SheetPlan } from '../templatePlan.js';

const heading = 4;
const first = heading + 1;
const last = heading + cardEntries.length;

/** A cell of the card by its name. */
export function cardCell(name: string): string {
  const row = cardEntries.findIndex((entry) => entry.name === name);
  if (row < 0) throw new Error(`no ${name} on the card`);
  return `Card!$B$${first + row}`;
}

export const cardCells = `Card!$A$${first}:$B$${last}`;

/** What the keeper says once about the tank, in cells for writing. */
export const tankCard: SheetPlan = {
  name: 'Card',
  tab: 'write',
  widths: [24, 32, 78],
  heights: [
    { rows: [1, 1], height: 28 },
    { rows: [heading, heading], height: 20 },
    { rows: [first, last], height: 27 },
  ],
  frozen: { rows: heading },
  blocks: [
    { at: 'A1', cells: [['The card of the tank']] },
    {
      at: 'A2',
      cells: [['Fill in the blue cells. What is left empty is usual or unknown, and is left out of the answers.']],
    },
    { at: `A${heading}`, cells: [['Name', 'Value', 'What it is for']] },
    { at: `A${first}`, cells: cardEntries.map(({ name, value, note }): PlanCell[] => [name, value, note]) },
  ],
  looks: [
    { range: 'A1:C1', look: 'title' },
    { range: 'A2:C2', look: 'note' },
    { range: `A${heading}:C${heading}`, look: 'heading' },
    { range: `A${first}:A${last}`, look: 'label' },
    { range: `B${first}:B${last}`, look: 'input' },
    { range: `C${first}:C${last}`, look: 'explained' },
  ],
  formats: [
    ...cardEntries.flatMap(({ format }, i) => (format === undefined ? [] : [{ range: `B${first + i}`, format }])),
  ],
  merged: ['A2:C2'],
  validations: cardEntries.map(({ name, allows, refusal, note }, i) => ({
    range: `B${first + i}`,
    allows,
    title: name,
    prompt: note,
    refusal,
  })),
  page: { orientation: 'portrait' },
};
