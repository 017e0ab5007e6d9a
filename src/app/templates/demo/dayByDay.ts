import { answerTable, line } from '../plan/index.js';
import { demoSheet } from './demoSheet.js';
import { keeperReadings } from './keeperLog.js';

/** A row for every reading of the log, in time order. */
export const dayByDay = demoSheet({
  name: 'Day by day',
  title: 'Every reading of the log in time order, with its place in the hold',
  frozenRows: 3,
  parts: [
    line(
      'A2',
      'One formula, in A3. Row is the row of the sheet Log; of a range such as 2.1-2.2 the low end counts for the hold.',
      'aside',
    ),
    answerTable({
      at: 'A3',
      id: 'HOLDROWS',
      given: `${keeperReadings},{Log!copper}`,
      columns: { When: 140, Copper: 84, Status: 84, 'Hold day': 84, 'Days done': 90, Row: 64, Note: 430 },
      room: 92,
    }),
  ],
});
