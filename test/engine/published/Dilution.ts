import type { PublishedTable } from './publishedTable.js';

/** C·(1 − f)^n, worked by hand. */
export const shareLeft: PublishedTable = {
  source: { key: 'Arithmetic', at: 'what equal changes leave' },
  basis: 'share of the level left',
  columns: ['share changed [1]', 'changes [1]', 'left [1]'],
  rows: [['0.25', '3', '0.421875']],
  misprints: [],
};

export const changesFromTwentyHundredths: PublishedTable = {
  source: { key: 'Arithmetic', at: 'changes from 0.20 to 0.01 mg/L' },
  basis: 'whole changes of copper-free water',
  columns: ['level [mg/L]', 'wanted [mg/L]', 'share changed [1]', 'changes [1]'],
  rows: [
    ['0.20', '0.01', '0.50', '5'],
    ['0.20', '0.01', '0.25', '11'],
  ],
  misprints: [],
};
