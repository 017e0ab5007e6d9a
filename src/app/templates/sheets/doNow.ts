import { answerTable, bodies, line, type Part, table } from '../plan/index.js';
import { wordTones } from './tones.js';

/** Rows made ready for what is to do. */
const room = 8;

/** What to do, filled by one formula below a heading, and beside it in a word whether its time has come. */
export function doNow(given: string, heading: number): Part[] {
  const tasks = answerTable({
    at: { row: heading, column: 0 },
    id: 'DONOW',
    given,
    columns: {
      Do: { width: 34, look: 'name' },
      Amount: 20,
      Unit: 14,
      By: 18,
      Why: { width: 72, look: 'smallText' },
    },
    room,
    height: 24,
  });
  const due = table({
    beside: tasks,
    key: 'due',
    columns: [
      {
        heading: 'Due',
        kind: 'text',
        width: 11,
        formula: '=IF(ISNUMBER({By}),IF({By}<AsOf-1/1440,"overdue",IF({By}<=AsOf+1/1440,"now","later")),"")',
      },
    ],
    room,
    body: bodies.plain,
    tones: [wordTones('Due', { now: 'due', overdue: 'overdue' })],
    ruled: 'first',
  });
  const section = line({ row: heading - 1, column: 0 }, 'What to do', 'section', { columns: due.lastColumn + 1 });
  return [section, tasks, due];
}
