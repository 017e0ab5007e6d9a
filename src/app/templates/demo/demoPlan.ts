import { type TemplatePlan, templatePlanOf } from '../plan/index.js';
import { calendar } from './calendar.js';
import { checks } from './checks.js';
import { dayByDay } from './dayByDay.js';
import { disease } from './disease.js';
import { dosing } from './dosing.js';
import { fishList } from './fishList.js';
import { keeperLog } from './keeperLog.js';
import { loss } from './loss.js';
import { pastAudit } from './past/pastAudit.js';
import { pastNotes } from './past/pastNotes.js';
import { pastCard } from './past/pastCard.js';
import { pastFish } from './past/pastFish.js';
import { pastLevels } from './past/pastLevels.js';
import { pastLog } from './past/pastLog.js';
import { pastSteps } from './past/pastSteps.js';
import { auditedSystem } from './shop/auditedSystem.js';
import { shopLog } from './shop/shopLog.js';
import { shopNow } from './shop/shopNow.js';
import { signNotes } from './signNotes.js';
import { solutions } from './solutions.js';
import { trust } from './trust.js';
import { waterChange } from './waterChange.js';
import { waterQuality } from './waterQuality.js';

/** The demo workbook, its sheets from left to right. Another sheet is a file beside these and a name here. */
export const demoPlan: TemplatePlan = templatePlanOf({
  title: 'Demo of Lazaret: keepers, shops, fish and figures are invented',
  subject: 'Every cell function of the add-in Lazaret on invented data of marine fish quarantines with copper',
  description:
    'Keepers, shops, fish and figures are invented. The answers are cell functions of the add-in Lazaret. Copper is a poison: an aquatic veterinarian decides.',
  sheets: [
    ...[keeperLog, dayByDay, pastLog, pastCard, pastAudit, pastNotes, pastLevels, pastSteps, pastFish],
    ...[shopNow, shopLog, auditedSystem, dosing, solutions, waterChange, trust, loss],
    ...[fishList, disease, signNotes, calendar, waterQuality, checks],
  ],
  names: [],
  isFitted: true,
});
