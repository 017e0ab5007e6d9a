import type { ThinnedStock } from '../chemistry/thinnedStock.js';
import type { Table } from '../result/table.js';

/** THIN as a table. */
export function thinTable({ stock, water }: ThinnedStock): Table {
  return { heading: ['Stock mL', 'Water mL'], rows: [[stock, water]] };
}
