import type { PublishedTable } from './publishedTable.js';

/** "1 g in 250 mL contains 1 mg/mL" (seen). */
export const roundStock: PublishedTable = {
  source: { key: 'FishHealthPage', at: 'stock solution' },
  basis: 'pentahydrate; mg Cu per mL of stock, printed to one figure (1.018 derived)',
  columns: ['salt [g]', 'made up to [L]', 'strength [mg Cu/mL]'],
  rows: [['1', '0.250', '1']],
  misprints: [],
};
export const roundStockDerived = '1.018';

/** The copper for 200 L at 0.15 mg/L (seen). */
export const copperForTank: PublishedTable = {
  source: { key: 'FishHealthPage', at: 'worked dose' },
  basis: 'mg Cu',
  columns: ['volume [L]', 'level [mg Cu/L]', 'copper [mg]'],
  rows: [['200', '0.15', '30']],
  misprints: [
    { row: 0, printed: '30 grams', shouldBe: '30 mg', why: '200 L × 0.15 mg/L = 30 mg: a thousandfold slip' },
  ],
};
