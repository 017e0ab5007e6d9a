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
  lead: 'A log of one tank under copper. Beside it the cell functions QT say what its rows come to: the days held, what is due, every break, the level between tests, and when the fish may go.',
  steps: [
    [
      'Look round',
      'The rows of Log are the examples of an invented keeper; By says example. See on the other sheets what is made of them.',
    ],
    [
      'Fill in the card',
      'Write into the blue cells of Card: volume, form of copper, strength of the solution, how good the meter is. What stays empty is usual or unknown.',
    ],
    [
      'Delete the examples',
      'Select the example rows in Log and delete them as rows of the table. From then on Now looks at the clock, no longer at the last row.',
    ],
    [
      'Write a row each time',
      'A row for every test, dose, water change, top-off, fish or sign, in any order; within a row the reading comes first. Nothing tested: leave the cell empty.',
    ],
    [
      'Read Now every day',
      'Do what is due there, test before every dose, look at Audit after it, and at Ready before a fish moves.',
    ],
  ],
  sheets: [
    ['Card', 'What is said once about the tank'],
    ['Log', 'The rows, a table that grows; row numbers in answers are the rows of this sheet'],
    ['Check', 'Whether the card and the headings of the log are understood'],
    ['Now', 'Days held, when they are full, what to do at this moment'],
    ['Days', 'Every reading with its standing and its day of the hold'],
    ['Breaks', 'Every hold and what ended it'],
    ['Audit', 'The verdict, and what the rules find in the rows'],
    ['Ready', 'The gates before fish are let go, each with its reason'],
    ['Fish', 'Hold days of each fish'],
    ['Deaths', 'Deaths by lot, beside the published yardstick'],
    ['Chart', 'Readings, the level that the log explains, and the band'],
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
