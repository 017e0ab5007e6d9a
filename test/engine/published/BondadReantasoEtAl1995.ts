import type { PublishedTable } from './publishedTable.js';

/** Bondad-Reantaso et al. (1995), abstract (seen): Neobenedenia girellae on Japanese flounder. */
export const flukeLifeAt25: PublishedTable = {
  source: { key: 'BondadReantasoEtAl1995', at: 'abstract' },
  basis: 'days at 25 °C: eggs begin to hatch, then maturity of a hatched fluke',
  columns: ['stage', 'days'],
  rows: [
    ['hatching', '5-6'],
    ['maturity', '10-11'],
  ],
  misprints: [],
};
