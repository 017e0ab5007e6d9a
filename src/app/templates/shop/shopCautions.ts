import { cautionRows } from '../sheets/cautionRows.js';
import type { SheetPlan } from '../templatePlan.js';

const first = 4;
const { texts, blocks, looks } = cautionRows(first, 'B');

/** The cautions on a sheet of their own, to be printed and pinned up. */
export const shopCautions: SheetPlan = {
  name: 'Cautions',
  tab: 'read',
  widths: [5, 100],
  heights: [
    { rows: [1, 1], height: 28 },
    { rows: [first, first + texts.length - 1], height: 30 },
  ],
  blocks: [{ at: 'A1', cells: [['To be read before any copper is used']] }, ...blocks],
  looks: [{ range: 'A1:B1', look: 'title' }, ...looks],
  formats: [],
  merged: [],
  page: { orientation: 'portrait' },
};
