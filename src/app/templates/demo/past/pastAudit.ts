import { answerTable, bodies, line } from '../../plan/index.js';
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
      columns: { Severity: 80, When: 132, Row: 46, Finding: 560, Why: 410, Source: 164 },
      room: 32,
      body: bodies.small,
      ruled: 'any',
    }),
  ],
});
