import { columnsOf, type Table } from '../result/table.js';
import { cautions } from './cautions.js';

export const cautionsColumns = columnsOf({ Caution: 'text' });

/** CAUTIONS as a table. */
export function cautionsTable(): Table {
  return { columns: cautionsColumns, rows: cautions.map((caution) => [caution]) };
}
