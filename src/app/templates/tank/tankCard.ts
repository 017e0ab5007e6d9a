import { form } from '../plan/form.js';
import { line } from '../plan/line.js';
import { rows } from '../plan/rows.js';
import { sheetPlan } from '../plan/sheetPlan.js';
import type { SheetPlan } from '../plan/templatePlan.js';
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
      'Fill in the blue cells. What is left empty is usual or unknown, and is left out of the answers.',
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
      lines: cardEntries.map(({ name, value, format, allows, refusal, note }) => ({
        key: name,
        label: name,
        given: value,
        ...(format === undefined ? {} : { format }),
        beside: note,
        takes: { allows, refusal, prompt: note },
      })),
    }),
  ],
});
