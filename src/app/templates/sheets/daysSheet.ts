import type { SheetPlan } from '../templatePlan.js';
import { standing } from './standing.js';
import { tableSheet } from './tableSheet.js';

/** Every reading in time order, with its standing and its day of the hold. */
export function daysSheet(formula: string): SheetPlan {
  return tableSheet({
    name: 'Days',
    title: 'Every reading, with its place in the hold',
    lead: 'One formula, in A4. Row is the row of the sheet Log; of a range such as 2.0-2.2 the low end counts for the hold.',
    formula,
    columns: [
      { width: 18, format: 'yyyy-mm-dd hh:mm' },
      { width: 10, format: '0.00', isNumber: true },
      { width: 12 },
      { width: 10, format: '0', isNumber: true },
      { width: 12, format: '0.00', isNumber: true },
      { width: 8, format: '0', isNumber: true },
      { width: 56 },
    ],
    rows: 300,
    conditions: (first, last) => [standing('C', first, last)],
    orientation: 'portrait',
  });
}
