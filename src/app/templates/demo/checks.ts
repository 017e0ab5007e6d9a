import { answerTable, bodies, form, line } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';

const columns = 5;

/** What must be known before copper is used, and whether this copy computes as published. */
export const checks = demoSheet({
  name: 'Checks',
  title: 'Read this before any copper, and see that this copy computes as published',
  parts: [
    line('A3', '', 'heading', { columns }),
    answerTable({ at: 'A3', id: 'CAUTIONS', given: '', room: 18 }),
    line('A23', 'Published values, recomputed in place', 'section', { columns }),
    form({
      at: 'A24',
      lines: {
        values: ['Values that disagree', '=COUNTIF({SELFCHECK.Agrees},FALSE)', '', '0'],
      },
    }),
    answerTable({
      at: 'A25',
      id: 'SELFCHECK',
      given: '',
      columns: { Check: 552, Published: 100, Computed: 100, Agrees: 70, Source: 548 },
      room: 95,
      body: bodies.small,
      ruled: 'any',
    }),
  ],
});
