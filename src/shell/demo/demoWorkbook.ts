import { dayByDay } from './dayByDay.js';
import { dosing } from './dosing.js';
import { keeperLog } from './keeperLog.js';
import type { SheetPlan } from './sheetPlan.js';
import { waterChange } from './waterChange.js';

/** The sheets of the demo, from left to right. Another sheet is a file beside these and a name here. */
export const demoWorkbook: readonly SheetPlan[] = [keeperLog, dayByDay, dosing, waterChange];
