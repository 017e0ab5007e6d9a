import { answerTable } from '../plan/answerTable.js';
import { form } from '../plan/form.js';
import { line } from '../plan/line.js';
import { bodies } from '../plan/column.js';
import { table } from '../plan/table.js';
import type { Content } from '../plan/templatePlan.js';
import { demoSheet } from './demoSheet.js';
import { serialOf } from './serialOf.js';

const notes: readonly Content[][] = [
  [serialOf('2026-04-08 20:00'), 'anthias breathing fast'],
  [serialOf('2026-04-09 08:00'), 'anthias not eating, ammonia badge clear'],
  [serialOf('2026-04-10 08:00'), 'anthias eating again'],
  [serialOf('2026-04-12 08:00'), 'all eating'],
  [serialOf('2026-04-13 08:00'), 'new pump fitted'],
  [serialOf('2026-04-20 08:00'), 'tang flashing, hiding'],
];
/** With room for the notes to come. */
const room = 27;

/** What a keeper saw, and the step each note calls for. */
export const signNotes = demoSheet({
  name: 'Signs',
  title: 'Signs in tank Q3, and the step each calls for',
  isLog: true,
  gap: 20,
  parts: [
    form({
      at: 'A3',
      title: 'What the steps mean (common practice)',
      columns: 6,
      looks: { given: 'log' },
      lines: [
        { label: 'test first', given: 'ammonia, oxygen and copper: velvet, flukes and ammonia look the same' },
        {
          label: 'lower and wait',
          given:
            'copper in the band, ammonia none, the fish in for 48 hours: lower the level until it eats; below the band the hold is broken',
        },
        { label: 'raise slowly', given: 'it eats and acts normally again' },
        {
          label: 'stop copper',
          given: 'signs a second time, after a recovery or three clear days: another treatment',
        },
        { label: 'unread', given: 'the note was not understood, or says nothing of the fish' },
      ],
    }),
    line('A10', 'An aquatic veterinarian decides.', 'warning', { columns: 6, isMerged: true }),
    line('A12', 'Notes, in your own words', 'section', { columns: 2 }),
    table({
      at: 'A13',
      key: 'notes',
      columns: [
        { key: 'when', heading: 'When', kind: 'time', width: 132 },
        { key: 'seen', heading: 'What was seen', kind: 'text', width: 400 },
      ],
      rows: notes,
      room,
      body: bodies.log,
      ruled: 'any',
    }),
    line('D12', 'Read by one formula, in D13', 'section', { columns: 3 }),
    answerTable({
      at: 'D13',
      id: 'SIGNS',
      given: '{notes.when+},{notes.seen+}',
      columns: { When: { width: 132 }, Seen: { width: 400 }, Step: { width: 180 } },
      room,
      body: bodies.log,
      ruled: 'any',
    }),
  ],
});
