import { auditSheet } from '../sheets/auditSheet.js';
import { chartSheet } from '../sheets/chartSheet.js';
import { deathsSheet } from '../sheets/deathsSheet.js';
import { fishSheet } from '../sheets/fishSheet.js';
import { logSheet } from '../sheets/logSheet.js';
import { readySheet } from '../sheets/readySheet.js';
import { startSheet } from '../sheets/startSheet.js';
import type { TemplatePlan } from '../templatePlan.js';
import { chosenCell, itsBandCells, itsCardCells, itsRows, oneSystem } from './oneSystem.js';
import { shopCards, systemNames } from './shopCards.js';
import { shopCautions } from './shopCautions.js';
import { shopHeadings, shopLogRows } from './shopLogRows.js';
import { asOfCell, shopOverview } from './shopOverview.js';
import { shopStart } from './shopStart.js';

/** A shop: one log for all systems, their cards, how each stands, one of them in full. */
export const shopPlan: TemplatePlan = {
  title: 'Copper quarantine log of several systems',
  subject: 'Shared log, cards, standing of every system of a marine fish quarantine with copper',
  description:
    'Rows and systems are examples of an invented shop, to be replaced. The answers are cell functions of the add-in Lazaret. Copper is a poison: an aquatic veterinarian decides.',
  sheets: [
    startSheet(shopStart),
    shopCards,
    logSheet({ headings: shopHeadings, rows: shopLogRows, lastRow: 401, systems: systemNames, frozen: 2 }),
    shopOverview,
    oneSystem,
    auditSheet(
      `=QT.AUDIT(${itsRows},ItsCard,AsOf)`,
      'One formula, in A4, over the rows of the system chosen on the sheet One system. Row is the row of the sheet Log: mend it there.',
    ),
    readySheet(`=QT.READY(${itsRows},ItsCard,AsOf)`),
    fishSheet(`=QT.FISHDAYS(${itsRows},ItsCard,AsOf)`),
    deathsSheet(`=QT.DEATHS(${itsRows},ItsCard)`),
    chartSheet({ levels: `=QT.LEVELS(${itsRows},ItsCard)`, ...itsBandCells, whose: 'the chosen system' }),
    shopCautions,
  ],
  names: [
    { name: 'AsOf', cells: asOfCell, comment: 'The moment that the answers look at' },
    { name: 'Chosen', cells: chosenCell, comment: 'The system that is looked at in full' },
    { name: 'ItsCard', cells: itsCardCells, comment: 'Names and values of the card of the chosen system' },
  ],
};
