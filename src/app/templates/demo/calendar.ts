import { answerTable } from '../plan/answerTable.js';
import { form } from '../plan/form.js';
import { line } from '../plan/line.js';
import { rows } from '../plan/rows.js';
import { bodies } from '../plan/column.js';
import { demoSheet } from './demoSheet.js';
import { serialOf } from './serialOf.js';

const columns = 4;
const moment = 'yyyy-mm-dd hh:mm';

/** A quarantine from screening to the end of observation, and how long to observe after one that is over. */
export const calendar = demoSheet({
  name: 'Calendar',
  title: 'A quarantine day by day: fill in the blue cells',
  parts: [
    form({
      at: 'A3',
      title: 'The next tank, Q4',
      columns,
      looks: { beside: 'aside' },
      lines: [
        { key: 'first', label: 'First dose', given: serialOf('2026-05-02 09:00'), format: moment },
        { key: 'copper', label: 'Copper', given: 'chelated', beside: 'write "sulfate", "amine" or "chelated"' },
        { key: 'days', label: 'Days of hold', given: 30 },
        {
          key: 'pace',
          label: 'Pace',
          given: 'gradual',
          beside: 'write "gradual", "sensitive", "urgent" or a number of days',
        },
        {
          key: 'medicine',
          label: 'Other medicine',
          given: 'praziquantel',
          beside: 'generic names, commas between them; or leave it empty',
        },
      ],
    }),
    form({
      at: 'A10',
      title: 'After copper, tank Q2',
      columns,
      looks: { beside: 'aside' },
      lines: [
        {
          key: 'out',
          label: 'Copper out at',
          given: serialOf('2026-04-17 12:00'),
          format: moment,
          beside: 'by a test after the last change',
        },
        { key: 'level', label: 'Median level', given: 2.15, format: '0.00', beside: 'mg/L, over the hold' },
      ],
    }),
    rows({ at: 'A13', cells: [['Observe at least to', 'Better to']], looks: ['numberHeading', 'numberHeading'] }),
    line('A14', '=QT.OBSERVEUNTIL({out},{level},"chelated")', 'answerNumber', { columns: 2, format: moment }),
    line(
      'C14',
      'two to four weeks; four where a chelated hold was run low, under 2.10 mg/L (common practice)',
      'aside',
    ),
    line('A16', 'The plan for tank Q4, every step with its reason', 'section', { columns }),
    answerTable({
      at: 'A17',
      id: 'PLAN',
      given: '{first},{copper},{days},{pace},{medicine}',
      columns: { When: { width: 132 }, Day: { width: 132 }, Do: { width: 632 }, Why: { width: 478 } },
      room: 29,
      body: bodies.small,
      ruled: 'any',
    }),
  ],
});
