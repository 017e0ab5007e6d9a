import { answerTable, bodies, form, type FormLine, line } from '../../plan/index.js';
import { demoSheet } from '../demoSheet.js';
import { shopCardColumns } from './shopNow.js';

/**
 * The shared log without the rows of other systems: they are made empty, so that a row named in the audit is the row of the
 * sheet Shop log. An empty cell stays empty and is not made 0.
 */
const itsRows =
  'IF(({Shop log!log.System+}={system})+({Shop log!log.System+}="System"),' +
  'IF(ISBLANK({Shop log!log+}),"",{Shop log!log+}),"")';

const itsRow = 'MATCH({system},{Shop!cards.System},0)';
const card = form({
  at: 'A3',
  key: 'card',
  lines: {
    system: ['System', 'C3'],
    ...Object.fromEntries(
      shopCardColumns
        .slice(1)
        .map(({ heading }, i): [string, FormLine] => [
          heading,
          [`=INDEX({Shop!cards headings},1,${i + 2})`, `=INDEX({Shop!cards},${itsRow},${i + 2})`],
        ]),
    ),
  },
});
const audit = answerTable({
  at: { row: shopCardColumns.length + 4, column: 0 },
  id: 'AUDIT',
  given: `${itsRows},{card},{Shop!asOf}`,
  columns: { Severity: 116, When: 132, Row: 46, Finding: 560, Why: 376, Source: 160 },
  room: 30,
  body: bodies.small,
  ruled: 'any',
});

/** One system of the shop, chosen in a cell, audited. */
export const auditedSystem = demoSheet({
  name: 'One system',
  title: 'One system of the shop, audited: write its name into the blue cell',
  parts: [
    card,
    line('D3', 'write A1 to C4; its card comes from the sheet Shop, its rows from the sheet Shop log', 'aside'),
    line(
      { row: audit.heading - 1, column: 0 },
      'The audit of its rows: one formula, which blanks the rows of the other systems; Row is the row of the sheet Shop log',
      'section',
      { columns: audit.columns.size },
    ),
    audit,
  ],
});
