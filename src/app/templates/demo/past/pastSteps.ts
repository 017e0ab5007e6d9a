import { answerTable, bodies, line } from '../../plan/index.js';
import { demoSheet } from '../demoSheet.js';
import { serialOf } from '../../sheets/rowsOf.js';
import { pastLogAndCard } from './pastLog.js';

const heading = 5;
const room = 9;

const tasks = answerTable({
  at: { row: heading, column: 0 },
  id: 'DONOW',
  given: `${pastLogAndCard},{asOf}`,
  columns: { Do: 120, Amount: 66, Unit: 74, By: 128, Why: 278 },
  room,
  body: bodies.small,
  ruled: 'any',
});
const gates = answerTable({
  at: { row: heading, column: tasks.lastColumn + 2 },
  id: 'READY',
  given: `${pastLogAndCard},{asOf}`,
  columns: { Gate: 136, Met: 60, Since: 128, Why: 374 },
  room,
  body: bodies.small,
  ruled: 'any',
});

/** What was to be done on the morning on which the keeper took the copper out, and which gates were met. */
export const pastSteps = demoSheet({
  name: 'Past steps',
  title: 'The past treatment at one moment: what to do, and may the fish go?',
  gap: 16,
  parts: [
    line('A3', 'As of', 'label', { columns: 3 }),
    line('D3', serialOf('2026-02-08 07:30'), 'inputNumber', { key: 'asOf', format: 'yyyy-mm-dd hh:mm' }),
    line('E3', 'the morning after day 30 by the keeper’s count; in real use, write =NOW()', 'aside'),
    line({ row: heading - 1, column: 0 }, 'What to do', 'section', { columns: tasks.columns.size }),
    tasks,
    line({ row: heading - 1, column: gates.firstColumn }, 'May the fish go?', 'section', {
      columns: gates.columns.size,
    }),
    gates,
  ],
});
