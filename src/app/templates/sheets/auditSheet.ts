import type { Condition, SheetPlan } from '../templatePlan.js';
import { tableSheet, type SpillColumn } from './tableSheet.js';

/** The columns of an audit. */
const auditColumns: readonly SpillColumn[] = [
  { width: 13 },
  { width: 18, format: 'yyyy-mm-dd hh:mm' },
  { width: 8, format: '0', isNumber: true },
  { width: 62, wraps: true },
  { width: 56, wraps: true },
  { width: 24, wraps: true },
];

/** Room for three lines, which the longest findings take. [points] */
const auditHeight = 37;

/** The tone of a severity; the word stands in the cell. */
function severity(first: number, last: number): Condition {
  const cell = `$A${first}`;
  return {
    range: `A${first}:A${last}`,
    rules: [
      { when: `${cell}="verdict"`, tone: 'verdict' },
      { when: `${cell}="danger"`, tone: 'overdue' },
      { when: `${cell}="warning"`, tone: 'due' },
    ],
  };
}

/** The audit of a log, on a sheet of its own. */
export function auditSheet(formula: string, lead: string): SheetPlan {
  return tableSheet({
    name: 'Audit',
    title: 'The audit: the verdict, then dangers, warnings and notes',
    lead,
    formula,
    columns: auditColumns,
    rows: 80,
    height: auditHeight,
    conditions: (first, last) => [severity(first, last)],
    orientation: 'landscape',
  });
}
