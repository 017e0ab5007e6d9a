import type { SheetPlan } from '../templatePlan.js';
import { tableSheet } from './tableSheet.js';

/** Every hold, and what ended it. */
export function breaksSheet(formula: string): SheetPlan {
  return tableSheet({
    name: 'Breaks',
    title: 'Every hold, and what ended it',
    lead: 'One formula, in A4. One reading below the band and the hold begins anew. Row is the row of the sheet Log at which it ended.',
    formula,
    columns: [
      { width: 20, format: 'yyyy-mm-dd hh:mm' },
      { width: 20, format: 'yyyy-mm-dd hh:mm' },
      { width: 10, format: '0.00', isNumber: true },
      { width: 14 },
      { width: 28 },
      { width: 10, format: '0', isNumber: true },
    ],
    rows: 60,
    conditions: (first, last) => [
      {
        range: `D${first}:D${last}`,
        rules: [
          { when: `$D${first}="yes"`, tone: 'done' },
          { when: `$D${first}="running"`, tone: 'inside' },
          { when: `$D${first}="no"`, tone: 'low' },
        ],
      },
    ],
    orientation: 'portrait',
  });
}
