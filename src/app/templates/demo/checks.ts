import { answerTable } from '../plan/answerTable.js';
import { form } from '../plan/form.js';
import { line } from '../plan/line.js';
import { bodies } from '../plan/column.js';
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
      lines: [{ label: 'Values that disagree', answer: '=COUNTIF({SELFCHECK.Agrees},FALSE)', format: '0' }],
    }),
    answerTable({
      at: 'A25',
      id: 'SELFCHECK',
      given: '',
      columns: {
        ...{ Check: { width: 552 }, Published: { width: 100 }, Computed: { width: 100 } },
        ...{ Agrees: { width: 70 }, Source: { width: 548 } },
      },
      room: 95,
      body: bodies.small,
      ruled: 'any',
    }),
  ],
});
