import type { PublishedTable } from './publishedTable.js';

/** Exact by definition; from memory. */
export const litresInGallons: PublishedTable = {
  source: { key: 'Handbook44', at: 'appendix C; the imperial gallon from UKWeightsMeasures1985' },
  basis: 'litres, exact',
  columns: ['US gallon [L]', 'imperial gallon [L]'],
  rows: [['3.785411784', '4.54609']],
  misprints: [],
};
