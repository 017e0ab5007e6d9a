import { answerTable, bodies, line } from '../../plan/index.js';
import { demoSheet } from '../demoSheet.js';
import { pastLogAndCard } from './pastLog.js';

const deaths = answerTable({
  at: 'A15',
  id: 'DEATHS',
  given: pastLogAndCard,
  columns: {
    Lot: 440,
    'Came in': 136,
    'Dead on arrival': 130,
    Raising: 136,
    Hold: 90,
    Observation: 110,
    Left: 90,
    '% after arrival': 140,
  },
  room: 2,
  body: bodies.small,
  ruled: 'any',
});
const columns = deaths.columns.size;

/** Each fish of the past treatment with its own days, and the deaths beside the published yardstick. */
export const pastFish = demoSheet({
  name: 'Past fish',
  title: 'The fish of the past treatment: each has its own days, and every death counts',
  parts: [
    line('A3', 'Hold days of each fish, on the morning after day 30 by the keeper’s count', 'section', { columns }),
    // The heading runs on above the columns of the table below, as far as notes do.
    line('A4', '', 'heading', { columns }),
    line('A5', '', 'cell', { columns, rows: 8 }),
    answerTable({
      at: 'A4',
      id: 'FISHDAYS',
      given: `${pastLogAndCard},{Past steps!asOf}`,
      columns: {
        ...{ Fish: 440, Arrived: 136, 'Hold days': { width: 130, format: '0.00' } },
        'Ready on': 136,
        Note: 90,
      },
      room: 8,
    }),
    line('A14', 'Deaths, to the end of the log', 'section', { columns }),
    deaths,
  ],
});
