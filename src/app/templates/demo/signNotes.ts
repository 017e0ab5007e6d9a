import { answerTable, type Content, form, line, table } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';
import { serialOf } from '../sheets/rowsOf.js';

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
      looks: { given: 'cell' },
      lines: {
        test: ['test first', 'ammonia, oxygen and copper: velvet, flukes and ammonia look the same'],
        lower: [
          'lower and wait',
          'copper in the band, ammonia none, the fish in for 48 hours: lower the level until it eats; below the band the hold is broken',
        ],
        raise: ['raise slowly', 'it eats and acts normally again'],
        stop: ['stop copper', 'signs a second time, after a recovery or three clear days: another treatment'],
        unread: ['unread', 'the note was not understood, or says nothing of the fish'],
      },
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
      ruled: 'any',
    }),
    line('D12', 'Read by one formula, in D13', 'section', { columns: 3 }),
    answerTable({
      at: 'D13',
      id: 'SIGNS',
      given: '{notes.when+},{notes.seen+}',
      columns: { When: 132, Seen: 400, Step: 180 },
      room,
      ruled: 'any',
    }),
  ],
});
