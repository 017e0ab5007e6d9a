import type { PublishedTable } from './publishedTable.js';

/** 3 g pentahydrate with 2 g citric acid made up to 750 mL (copy); the strength is derived. */
export const citratedStock: PublishedTable = {
  source: { key: 'HawaiiExtension', at: 'stock solution' },
  basis: 'pentahydrate; mg Cu per mL of stock',
  columns: ['salt [g]', 'made up to [L]', 'strength [mg Cu/mL]'],
  rows: [['3', '0.750', '1.01805']],
  misprints: [],
};
