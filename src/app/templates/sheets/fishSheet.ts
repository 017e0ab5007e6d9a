import type { SheetPlan } from '../templatePlan.js';
import { tableSheet } from './tableSheet.js';

/** Each fish or group with its own days. */
export function fishSheet(formula: string): SheetPlan {
  return tableSheet({
    name: 'Fish',
    title: 'The fish: each has its own days',
    lead: 'One formula, in A4. A fish without an arrival in the log has no days; those of dead, moved and sold fish end there.',
    formula,
    columns: [
      { width: 34 },
      { width: 20, format: 'yyyy-mm-dd hh:mm' },
      { width: 12, format: '0.0', isNumber: true },
      { width: 20, format: 'yyyy-mm-dd hh:mm' },
      { width: 54, wraps: true },
    ],
    rows: 80,
    height: 26,
    orientation: 'landscape',
  });
}
