import type { AmmoniaChange } from '../ammonia/ammoniaChange.js';
import { columnsOf, type Table } from '../result/table.js';

export const ammoniaChangeColumns = columnsOf({ 'Change L': 'number', 'Copper mL for the new water': 'number' });

/** The change that dilutes ammonia, one row. */
export function ammoniaChangeTable({ change, copper }: AmmoniaChange): Table {
  return { columns: ammoniaChangeColumns, rows: [[change, copper]] };
}
