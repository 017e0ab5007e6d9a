import type { TemplatePlan } from '../plan/templatePlan.js';
import { templatePlanOf } from '../plan/templatePlanOf.js';
import { deathsSheet, fishSheet, readySheet } from '../sheets/fishSheets.js';
import { auditSheet, breaksSheet, daysSheet } from '../sheets/holdSheets.js';
import { chartSheet } from '../sheets/chartSheet.js';
import { logSheet } from '../sheets/logSheet.js';
import { startSheet } from '../sheets/startSheet.js';
import { tankCard } from './tankCard.js';
import { tankCheck } from './tankCheck.js';
import { tankHeadings, tankLogRows } from './tankLogRows.js';
import { holdToDays, holdToMoment, tankNow } from './tankNow.js';
import { tankStart } from './tankStart.js';

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
      low: '{$Now!band low$}',
      high: '{$Now!band high$}',
      whose: 'the tank',
    }),
  ],
  names: [
    { name: 'Card', cells: '{$Card!card$}', comment: 'Names and values of the card' },
    { name: 'AsOf', cells: '{$Now!asOf$}', comment: 'The moment that the answers look at' },
  ],
});
