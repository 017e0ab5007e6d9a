import type { SheetPlan } from '../templatePlan.js';
import { tableSheet } from './tableSheet.js';

/** The gates before fish are let go, the verdict in the last row. */
export function readySheet(formula: string): SheetPlan {
  return tableSheet({
    name: 'Ready',
    title: 'May the fish go?',
    lead: 'One formula, in A4. Every gate has to be met, and the verdict stands in the last row; an aquatic veterinarian and local law come before it.',
    formula,
    columns: [{ width: 24 }, { width: 10 }, { width: 18, format: 'yyyy-mm-dd hh:mm' }, { width: 78, wraps: true }],
    rows: 16,
    height: 30,
    conditions: (first, last) => [
      {
        range: `B${first}:B${last}`,
        rules: [
          { when: `$B${first}="yes"`, tone: 'inside' },
          { when: `$B${first}="no"`, tone: 'low' },
        ],
      },
      {
        range: `A${first}:D${last}`,
        rules: [{ when: `AND($A${first}<>"",$B${first}="")`, tone: 'verdict' }],
      },
    ],
    orientation: 'landscape',
  });
}
