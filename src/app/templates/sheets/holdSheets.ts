import type { SheetPlan } from '../plan/templatePlan.js';
import { answerSheet } from './answerSheet.js';
import { standingTones } from './tones.js';

/** Every reading in time order, with its standing and its day of the hold. */
export function daysSheet(given: string): SheetPlan {
  return answerSheet({
    name: 'Days',
    title: 'Every reading, with its place in the hold',
    lead: 'One formula, in A4. Row is the row of the sheet Log; of a range such as 2.0-2.2 the low end counts for the hold.',
    id: 'HOLDROWS',
    given,
    columns: {
      ...{ When: { width: 18 }, Copper: { width: 10 }, Status: { width: 12 }, 'Hold day': { width: 10 } },
      ...{ 'Days done': { width: 12 }, Row: { width: 8 }, Note: { width: 56 } },
    },
    room: 300,
    tones: [standingTones],
    orientation: 'portrait',
  });
}

/** Every hold, and what ended it. */
export function breaksSheet(given: string): SheetPlan {
  return answerSheet({
    name: 'Breaks',
    title: 'Every hold, and what ended it',
    lead: 'One formula, in A4. One reading below the band and the hold begins again. Row is the row of the sheet Log at which it ended.',
    id: 'HOLDS',
    given,
    columns: {
      ...{ From: { width: 20 }, To: { width: 20 }, Days: { width: 10 }, Enough: { width: 14 } },
      ...{ 'Ended by': { width: 28 }, Row: { width: 10 } },
    },
    room: 60,
    tones: [
      {
        on: 'Enough',
        rules: [
          { when: '{$Enough}="yes"', tone: 'done' },
          { when: '{$Enough}="running"', tone: 'inside' },
          { when: '{$Enough}="no"', tone: 'low' },
        ],
      },
    ],
    orientation: 'portrait',
  });
}

/** The audit of a log. Its rows have room for three lines, which the longest findings take. */
export function auditSheet(given: string, lead: string): SheetPlan {
  return answerSheet({
    name: 'Audit',
    title: 'The audit: the verdict, then dangers, warnings and notes',
    lead,
    id: 'AUDIT',
    given,
    columns: {
      ...{ Severity: { width: 13 }, When: { width: 18 }, Row: { width: 8 } },
      Finding: { width: 62, look: 'spillText' },
      Why: { width: 56, look: 'spillText' },
      Source: { width: 24, look: 'spillText' },
    },
    room: 80,
    height: 37,
    tones: [
      {
        on: 'Severity',
        rules: [
          { when: '{$Severity}="verdict"', tone: 'verdict' },
          { when: '{$Severity}="danger"', tone: 'overdue' },
          { when: '{$Severity}="warning"', tone: 'due' },
        ],
      },
    ],
    orientation: 'landscape',
  });
}
