import type { AmmoniaChange } from '../ammonia/ammoniaChange.js';
import type { Table } from '../result/table.js';

/** The change that dilutes ammonia, one row. */
export function ammoniaChangeTable({ change, copper }: AmmoniaChange): Table {
  return { heading: ['Change L', 'Copper mL for the new water'], rows: [[change, copper]] };
}
