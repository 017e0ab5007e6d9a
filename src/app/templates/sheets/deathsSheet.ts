import type { SheetPlan } from '../templatePlan.js';
import { tableSheet } from './tableSheet.js';

const count = { width: 11, format: '0', isNumber: true };

/** The deaths of each lot beside the published yardstick. */
export function deathsSheet(formula: string): SheetPlan {
  return tableSheet({
    name: 'Deaths',
    title: 'Deaths by lot, beside the published yardstick',
    lead: 'One formula, in A4. Where the log names no lots, all fish are one.',
    formula,
    columns: [
      { width: 70, wraps: true },
      count,
      { ...count, width: 12 },
      count,
      count,
      { ...count, width: 13 },
      count,
      { width: 11, format: '0.0', isNumber: true },
    ],
    rows: 40,
    height: 37,
    headingHeight: 32,
    orientation: 'landscape',
  });
}
