import { demoWorkbook } from './demoWorkbook.js';
import type { TemplatePlan } from '../templatePlan.js';
import { demoSheet } from './demoSheet.js';

/** The demo of the page as a workbook: the same sheets in the same order, so that a copy can be saved of it. */
export const demoPlan: TemplatePlan = {
  title: 'Demo of Lazaret: keepers, shops, fish and figures are invented',
  subject: 'Every cell function of the add-in Lazaret on invented data of marine fish quarantines with copper',
  description:
    'Keepers, shops, fish and figures are invented. The answers are cell functions of the add-in Lazaret. Copper is a poison: an aquatic veterinarian decides.',
  sheets: demoWorkbook.map(demoSheet),
  names: [],
  isFitted: true,
};
