import { calendar } from './calendar.js';
import { checks } from './checks.js';
import { dayByDay } from './dayByDay.js';
import { disease } from './disease.js';
import { dosing } from './dosing.js';
import { fishList } from './fishList.js';
import { keeperLog } from './keeperLog.js';
import { loss } from './loss.js';
import { pastAudit } from './past/pastAudit.js';
import { pastCard } from './past/pastCard.js';
import { pastFish } from './past/pastFish.js';
import { pastLevels } from './past/pastLevels.js';
import { pastLog } from './past/pastLog.js';
import { pastSteps } from './past/pastSteps.js';
import { oneSystem } from './shop/oneSystem.js';
import { shopLog } from './shop/shopLog.js';
import { shopNow } from './shop/shopNow.js';
import type { SheetPlan } from './sheetPlan.js';
import { signNotes } from './signNotes.js';
import { solutions } from './solutions.js';
import { trust } from './trust.js';
import { waterChange } from './waterChange.js';
import { waterQuality } from './waterQuality.js';

/** The sheets of the demo, from left to right. Another sheet is a file beside these and a name here. */
export const demoWorkbook: readonly SheetPlan[] = [
  keeperLog,
  dayByDay,
  pastLog,
  pastCard,
  pastAudit,
  pastLevels,
  pastSteps,
  pastFish,
  shopNow,
  shopLog,
  oneSystem,
  dosing,
  solutions,
  waterChange,
  trust,
  loss,
  fishList,
  disease,
  signNotes,
  calendar,
  waterQuality,
  checks,
];
