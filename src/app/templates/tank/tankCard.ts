import { form, type FormLine, line, rows, sheetPlan, type SheetPlan } from '../plan/index.js';
import { cardEntries } from '../sheets/cardEntries.js';

const columns = 3;

/** What the keeper says once about the tank, in cells for writing; each is a place by its name, all of them `card`. */
export const tankCard: SheetPlan = sheetPlan({
  name: 'Card',
  tab: 'write',
  widths: [24, 32, 78],
  frozen: { rows: 4 },
  page: { orientation: 'portrait' },
  parts: [
    line('A1', 'The card of the tank', 'title', { columns, height: 28 }),
    line(
      'A2',
      'Fill in the blue cells. An empty cell means the usual value, or unknown, and is left out of the answers.',
      'note',
      { columns, isMerged: true },
    ),
    rows({
      at: 'A4',
      cells: [['Name', 'Value', 'What it is for']],
      looks: ['heading', 'heading', 'heading'],
      heights: [20],
    }),
    form({
      at: 'A5',
      key: 'card',
      looks: { given: 'input', beside: 'explained' },
      height: 27,
      lines: Object.fromEntries(
        cardEntries.map(({ name, value, format, allows, refusal, note }): [string, FormLine] => {
          const takes = { allows, refusal, prompt: note };
          return [name, [name, value, note, format === undefined ? { takes } : { takes, format }]];
        }),
      ),
    }),
  ],
});
