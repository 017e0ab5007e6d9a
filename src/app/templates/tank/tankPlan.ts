import { type TemplatePlan, templatePlanOf } from '../plan/index.js';
import { auditSheet, breaksSheet, daysSheet, deathsSheet, fishSheet, readySheet } from '../sheets/answerSheets.js';
import { chartSheet } from '../sheets/chartSheet.js';
import { logSheet } from '../sheets/logSheet.js';
import { startSheet } from '../sheets/startSheet.js';
import { tankCard } from './tankCard.js';
import { tankCheck } from './tankCheck.js';
import { tankHeadings, tankLogRows } from './tankLogRows.js';
import { holdToDays, holdToMoment, tankNow } from './tankNow.js';

const tankStart = {
  title: 'Copper quarantine log: one tank',
  lead: 'A log for one tank under copper. Next to it, the QT cell functions work out what its rows add up to: the days held, what is due, every break, the level between tests, and when the fish may go.',
  steps: [
    [
      'Look around',
      'The rows in Log are examples from an invented keeper; By says example. The other sheets show what is worked out from them.',
    ],
    [
      'Fill in the card',
      'Fill in the blue cells on Card: volume, form of copper, strength of the solution, accuracy of the meter. An empty cell means the usual value, or unknown.',
    ],
    [
      'Delete the examples',
      'Select the example rows in Log and delete them as table rows. From then on Now goes by the clock instead of the last row.',
    ],
    [
      'Write a row each time',
      'A row for every test, dose, water change, top-off, fish or sign, in any order; within a row, the reading comes first. If nothing was tested, leave the cell empty.',
    ],
    [
      'Read Now every day',
      'Do what is due there, and test before every dose. Check Audit afterwards, and Ready before any fish is moved.',
    ],
  ],
  sheets: [
    ['Card', 'The facts about the tank, entered once'],
    ['Log', 'The rows, in a table that grows; row numbers in answers refer to this sheet'],
    ['Check', 'Whether the card and the headings of the log are understood'],
    ['Now', 'Days held, when they are complete, and what to do now'],
    ['Days', 'Every reading, with its status and its day of the hold'],
    ['Breaks', 'Every hold and what ended it'],
    ['Audit', 'The verdict, and what the rules find in the rows'],
    ['Ready', 'The gates before fish are released, each with its reason'],
    ['Fish', 'Hold days of each fish'],
    ['Deaths', 'Deaths by lot, beside the published yardstick'],
    ['Chart', 'Readings, the level the log accounts for, and the band'],
  ],
} as const;

/** One tank: its log, its card, where it stands, its breaks and its chart. */
export const tankPlan: TemplatePlan = templatePlanOf({
  title: 'Copper quarantine log of one tank',
  subject: 'Log, hold, next step, breaks and level of a marine fish quarantine with copper',
  description:
    'The rows are examples of an invented keeper, to be deleted. The answers are cell functions of the add-in Lazaret. Copper is a poison: an aquatic veterinarian decides.',
  sheets: [
    startSheet(tankStart),
    tankCard,
    logSheet({ headings: tankHeadings, rows: tankLogRows, room: 120, frozen: 1 }),
    tankCheck,
    tankNow,
    daysSheet(holdToMoment),
    breaksSheet(holdToDays),
    auditSheet(
      'Log[#All],Card,AsOf',
      'One formula, in A4. Row is the row of the sheet Log: fix it there, and the answers follow.',
    ),
    readySheet('Log[#All],Card,AsOf'),
    fishSheet('Log[#All],Card,AsOf'),
    deathsSheet('Log[#All],Card'),
    chartSheet({
      given: 'Log[#All],Card',
      low: '{$Now!band 1$}',
      high: '{$Now!band 2$}',
      whose: 'the tank',
    }),
  ],
  names: [
    { name: 'Card', cells: '{$Card!card$}', comment: 'Names and values of the card' },
    { name: 'AsOf', cells: '{$Now!asOf$}', comment: 'The moment that the answers look at' },
  ],
});
