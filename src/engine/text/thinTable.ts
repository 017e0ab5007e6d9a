import type { ThinnedStock } from '../chemistry/thinnedStock.js';
import { columnsOf, type Table } from '../result/table.js';

export const thinColumns = columnsOf({ 'Stock mL': 'number', 'Water mL': 'number' });

/** THIN as a table. */
export function thinTable({ stock, water }: ThinnedStock): Table {
  return { columns: thinColumns, rows: [[stock, water]] };
}
