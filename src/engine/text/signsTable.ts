import type { Table } from '../result/table.js';
import type { SignRow } from '../rules/signs/signSteps.js';

/** Texts about the fish with the step each calls for, as SIGNS spills them. */
export function signsTable(rows: readonly SignRow[]): Table {
  return { heading: ['When', 'Seen', 'Step'], rows: rows.map(({ when, text, step }) => [when, text, step]) };
}
