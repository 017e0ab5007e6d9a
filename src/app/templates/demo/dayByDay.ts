import { answerTable } from '../plan/answerTable.js';
import { line } from '../plan/line.js';
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
      columns: {
        ...{ When: { width: 140 }, Copper: { width: 84 }, Status: { width: 84 }, 'Hold day': { width: 84 } },
        ...{ 'Days done': { width: 90 }, Row: { width: 64 }, Note: { width: 430 } },
      },
      room: 92,
    }),
  ],
});
