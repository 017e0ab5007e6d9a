import { table } from '../../plan/index.js';
import { demoSheet } from '../demoSheet.js';
import { pastColumns, pastRows } from './pastRows.js';

/** The log with its headings and the card, as another sheet refers to them. */
export const pastLogAndCard = '{Past log!log+},{Past card!card}';

/** A treatment that is over, in a keeper's own words and units. It begins in row 1, so a row named in a message is its row. */
export const pastLog = demoSheet({
  name: 'Past log',
  isLog: true,
  parts: [table({ at: 'A1', key: 'log', columns: pastColumns, rows: pastRows, room: 69, ruled: 'any' })],
});
