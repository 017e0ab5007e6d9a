import { line } from '../plan/line.js';
import { sheetPlan } from '../plan/sheetPlan.js';
import type { SheetPlan, TemplatePlan } from '../plan/templatePlan.js';
import { templatePlanOf } from '../plan/templatePlanOf.js';
import { deathsSheet, fishSheet, readySheet } from '../sheets/fishSheets.js';
import { auditSheet } from '../sheets/holdSheets.js';
import { cautionRows } from '../sheets/cautions.js';
import { chartSheet } from '../sheets/chartSheet.js';
import { logSheet } from '../sheets/logSheet.js';
import { startSheet } from '../sheets/startSheet.js';
import { itsRows, oneSystem } from './oneSystem.js';
import { shopCards } from './shopCards.js';
import { shopHeadings, shopLogRows } from './shopLogRows.js';
import { shopOverview } from './shopOverview.js';
import { shopStart } from './shopStart.js';

/** The cautions on a sheet of their own, to be printed and pinned up. */
const shopCautions: SheetPlan = sheetPlan({
  name: 'Cautions',
  tab: 'read',
  widths: [5, 100],
  page: { orientation: 'portrait' },
  parts: [
    line('A1', 'To be read before any copper is used', 'title', { columns: 2, height: 28 }),
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
      low: '{$One system!band low$}',
      high: '{$One system!band high$}',
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
