import { answerTable, bodies, form, line, rows } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';
import { serialOf } from '../sheets/rowsOf.js';

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
      lines: {
        first: ['First dose', serialOf('2026-05-02 09:00'), '', moment],
        copper: ['Copper', 'chelated', 'write "sulfate", "amine" or "chelated"'],
        days: ['Days of hold', 30],
        pace: ['Pace', 'gradual', 'write "gradual", "sensitive", "urgent" or a number of days'],
        medicine: ['Other medicine', 'praziquantel', 'generic names, separated by commas; or leave it empty'],
      },
    }),
    form({
      at: 'A10',
      title: 'After copper, tank Q2',
      columns,
      looks: { beside: 'aside' },
      lines: {
        out: ['Copper out at', serialOf('2026-04-17 12:00'), 'by a test after the last change', moment],
        level: ['Median level', 2.15, 'mg/L, over the hold', '0.00'],
      },
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
      columns: { When: 132, Day: 132, Do: 632, Why: 478 },
      room: 29,
      body: bodies.small,
      ruled: 'any',
    }),
  ],
});
