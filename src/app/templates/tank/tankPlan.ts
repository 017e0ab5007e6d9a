import { auditSheet } from '../sheets/auditSheet.js';
import { breaksSheet } from '../sheets/breaksSheet.js';
import { chartSheet } from '../sheets/chartSheet.js';
import { daysSheet } from '../sheets/daysSheet.js';
import { deathsSheet } from '../sheets/deathsSheet.js';
import { fishSheet } from '../sheets/fishSheet.js';
import { logSheet } from '../sheets/logSheet.js';
import { readySheet } from '../sheets/readySheet.js';
import { startSheet } from '../sheets/startSheet.js';
import type { TemplatePlan } from '../templatePlan.js';
import { cardCell, cardCells, tankCard } from './tankCard.js';
import { tankCheck } from './tankCheck.js';
import { tankHeadings, tankLogRows } from './tankLogRows.js';
import { asOfCell, bandCells, endTerms, holdTerms, readings, tankNow } from './tankNow.js';
import { tankStart } from './tankStart.js';

/** One tank: its log, its card, where it stands, its breaks and its chart. */
export const tankPlan: TemplatePlan = {
  title: 'Copper quarantine log of one tank',
  subject: 'Log, hold, next step, breaks and level of a marine fish quarantine with copper',
  description:
    'The rows are examples of an invented keeper, to be deleted. The answers are cell functions of the add-in Lazaret. Copper is a poison: an aquatic veterinarian decides.',
  sheets: [
    startSheet(tankStart),
    tankCard,
    logSheet({ headings: tankHeadings, rows: tankLogRows, lastRow: 121, frozen: 1 }),
    tankCheck,
    tankNow,
    daysSheet(`=QT.HOLDROWS(${readings},${cardCell('Form')},${holdTerms})`),
    breaksSheet(`=QT.HOLDS(${readings},${cardCell('Form')},${endTerms})`),
    auditSheet(
      '=QT.AUDIT(Log[#All],Card,AsOf)',
      'One formula, in A4. Row is the row of the sheet Log: mend it there, and the answers follow.',
    ),
    readySheet('=QT.READY(Log[#All],Card,AsOf)'),
    fishSheet('=QT.FISHDAYS(Log[#All],Card,AsOf)'),
    deathsSheet('=QT.DEATHS(Log[#All],Card)'),
    chartSheet({ levels: '=QT.LEVELS(Log[#All],Card)', ...bandCells, whose: 'the tank' }),
  ],
  names: [
    { name: 'Card', cells: cardCells, comment: 'Names and values of the card' },
    { name: 'AsOf', cells: asOfCell, comment: 'The moment that the answers look at' },
  ],
};
