import type { PublishedTable } from './publishedTable.js';

/** Free copper held, from the abstract (seen). */
export const freeCopperBand: PublishedTable = {
  source: { key: 'ZecHadfieldHungerford2021', at: 'abstract' },
  basis: 'mg/L Cu as free copper, from CuSO4·5H2O',
  columns: ['low [mg/L]', 'high [mg/L]'],
  rows: [['0.18', '0.21']],
  misprints: [],
};
