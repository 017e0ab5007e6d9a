import { line, sheetPlan, type SheetPlan, type TemplatePlan, templatePlanOf } from '../plan/index.js';
import { auditSheet, deathsSheet, fishSheet, readySheet } from '../sheets/answerSheets.js';
import { chartSheet } from '../sheets/chartSheet.js';
import { logSheet } from '../sheets/logSheet.js';
import { cautionRows, startSheet } from '../sheets/startSheet.js';
import { itsRows, oneSystem } from './oneSystem.js';
import { shopCards } from './shopCards.js';
import { shopHeadings, shopLogRows } from './shopLogRows.js';
import { shopOverview } from './shopOverview.js';

const shopStart = {
  title: 'Copper quarantine log: several systems',
  lead: 'One log for everyone, a card for each system, and what the QT cell functions make of them: how every system stands, what it needs now, and one system at a time in full.',
  steps: [
    [
      'Look around',
      'The rows in Log are examples from an invented shop; By begins with example. Overview and the sheets after it show what is worked out from them.',
    ],
    [
      'Write the cards',
      'On Systems, write a row for each system: its name, net volume, form of copper, strength of its solution, accuracy of its meter. Overwrite the six invented ones.',
    ],
    [
      'Delete the examples',
      'Select the example rows in Log and delete them as table rows. From then on Overview goes by the clock instead of the last row.',
    ],
    [
      'Write a row each time',
      'Choose the system, then write what was tested, dosed, changed or seen, and your initials. Within a row, the reading comes first. If nothing was tested, leave the cell empty.',
    ],
    [
      'Read Overview every shift',
      'Do what is due, and test before every dose. Choose a system on One system for its audit, its gates, its fish and its chart.',
    ],
  ],
  sheets: [
    ['Systems', 'The cards: the facts about each system, entered once'],
    ['Log', 'The rows of all systems, in a table that grows; row numbers in answers refer to this sheet'],
    ['Overview', 'How every system stands, what it needs now, and its days left as a chart'],
    ['One system', 'A system chosen from a list: its card, how it stands, what to do'],
    ['Audit', 'The audit of the rows of the chosen system'],
    ['Ready', 'Its gates before fish are released, each with its reason'],
    ['Fish', 'Hold days of each of its fish'],
    ['Deaths', 'Its deaths by lot, beside the published yardstick'],
    ['Chart', 'Its readings, the level its rows account for, and the band'],
    ['Cautions', 'The cautions again, for printing and pinning up'],
  ],
} as const;

/** The cautions on a sheet of their own, to be printed and pinned up. */
const shopCautions: SheetPlan = sheetPlan({
  name: 'Cautions',
  tab: 'read',
  widths: [5, 100],
  page: { orientation: 'portrait' },
  parts: [
    line('A1', 'Read this before using any copper', 'title', { columns: 2, height: 28 }),
    ...cautionRows(2, 1, () => 30),
  ],
});

/** A shop: one log for all systems, their cards, how each stands, one of them in full. */
export const shopPlan: TemplatePlan = templatePlanOf({
  title: 'Copper quarantine log of several systems',
  subject: 'Shared log, cards, standing of every system of a marine fish quarantine with copper',
  description:
    'Rows and systems are examples of an invented shop, to be replaced. The answers are cell functions of the add-in Lazaret. Copper is a poison: an aquatic veterinarian decides.',
  sheets: [
    startSheet(shopStart),
    shopCards,
    logSheet({
      headings: shopHeadings,
      rows: shopLogRows,
      room: 400,
      systems: '{$Systems!cards.System$}',
      frozen: 2,
    }),
    shopOverview,
    oneSystem,
    auditSheet(
      `${itsRows},ItsCard,AsOf`,
      'One formula, in A4, over the rows of the system chosen on the sheet One system. Row is the row of the sheet Log: fix it there.',
    ),
    readySheet(`${itsRows},ItsCard,AsOf`),
    fishSheet(`${itsRows},ItsCard,AsOf`),
    deathsSheet(`${itsRows},ItsCard`),
    chartSheet({
      given: `${itsRows},ItsCard`,
      low: '{$One system!band 1$}',
      high: '{$One system!band 2$}',
      whose: 'the chosen system',
    }),
    shopCautions,
  ],
  names: [
    { name: 'AsOf', cells: '{$Overview!asOf$}', comment: 'The moment that the answers look at' },
    { name: 'Chosen', cells: '{$One system!chosen$}', comment: 'The system that is looked at in full' },
    { name: 'ItsCard', cells: '{$One system!card$}', comment: 'Names and values of the card of the chosen system' },
  ],
});
