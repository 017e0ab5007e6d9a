import { answerTable } from '../../plan/answerTable.js';
import { line } from '../../plan/line.js';
import { bodies } from '../../plan/column.js';
import { demoSheet } from '../demoSheet.js';
import { pastLogAndCard } from './pastLog.js';

/** The past treatment recomputed from its rows. */
export const pastAudit = demoSheet({
  name: 'Past audit',
  title: 'The keeper counted thirty days. What the rows of the sheet Past log say',
  frozenRows: 4,
  parts: [
    line(
      'A2',
      'One formula, in A4. Row is the row of the sheet Past log; change a cell there and the audit is recalculated.',
      'aside',
    ),
    answerTable({
      at: 'A4',
      id: 'AUDIT',
      given: pastLogAndCard,
      columns: {
        ...{ Severity: { width: 80 }, When: { width: 132 }, Row: { width: 46 }, Finding: { width: 560 } },
        ...{ Why: { width: 410 }, Source: { width: 164 } },
      },
      room: 32,
      body: bodies.small,
      ruled: 'any',
    }),
  ],
});
