import type { Table } from '../result/table.js';
import { cautions } from './cautions.js';

/** CAUTIONS as a table. */
export function cautionsTable(): Table {
  return { heading: ['Caution'], rows: cautions.map((caution) => [caution]) };
}
