import { columnsOf, type Table } from '../result/table.js';
import type { SignRow } from '../rules/signs/signSteps.js';

export const signsColumns = columnsOf({ When: 'time', Seen: 'text', Step: 'text' });

/** Texts about the fish with the step each calls for, as SIGNS spills them. */
export function signsTable(rows: readonly SignRow[]): Table {
  return { columns: signsColumns, rows: rows.map(({ when, text, step }) => [when, text, step]) };
}
