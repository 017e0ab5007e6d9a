import type { PublishedTable } from './publishedTable.js';

/** 40 CFR 131.38, salt water, copper (seen); the ratio is derived. */
export const saltWaterCopper: PublishedTable = {
  source: { key: 'CFR131', at: 'salt water, copper' },
  basis: 'µg/L dissolved copper; the ratio of 0.20 mg/L to the acute figure',
  columns: ['acute [µg/L]', 'chronic [µg/L]', 'level [mg/L]', 'times the acute figure [1]'],
  rows: [['4.8', '3.1', '0.20', '42']],
  misprints: [],
};
