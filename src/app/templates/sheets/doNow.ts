import { answerTable } from '../plan/answerTable.js';
import { line } from '../plan/line.js';
import { bodies } from '../plan/column.js';
import { table } from '../plan/table.js';
import type { Part } from '../plan/templatePlan.js';

/** Rows made ready for what is to do. */
const room = 8;

/** What to do, filled by one formula below a heading, and beside it in a word whether its time has come. */
export function doNow(given: string, heading: number): Part[] {
  const tasks = answerTable({
    at: { row: heading, column: 0 },
    id: 'DONOW',
    given,
    columns: {
      Do: { width: 34, look: 'spillName' },
      ...{ Amount: { width: 20 }, Unit: { width: 14 }, By: { width: 18 } },
      Why: { width: 72, look: 'spillText' },
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
    tones: [
      {
        on: 'Due',
        rules: [
          { when: '{$Due}="now"', tone: 'due' },
          { when: '{$Due}="overdue"', tone: 'overdue' },
        ],
      },
    ],
    ruled: 'first',
  });
  const section = line({ row: heading - 1, column: 0 }, 'What to do', 'section', { columns: due.lastColumn + 1 });
  return [section, tasks, due];
}
