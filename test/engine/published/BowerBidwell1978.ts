import type { PublishedTable } from './publishedTable.js';

/** Copied from two reproductions that agree in every cell; the paper itself was not seen. */
export const unionisedPercent: PublishedTable = {
  source: { key: 'BowerBidwell1978', at: 'sea water of salinity 34, ionic strength 0.701 molal' },
  basis: '% of total ammonia present as NH3; pH on the NBS scale',
  columns: ['pH', '10 °C', '15 °C', '20 °C', '25 °C'],
  rows: [
    ['7.5', '0.459', '0.665', '0.963', '1.39'],
    ['7.6', '0.577', '0.836', '1.21', '1.75'],
    ['7.7', '0.726', '1.05', '1.52', '2.19'],
    ['7.8', '0.912', '1.32', '1.90', '2.74'],
    ['7.9', '1.15', '1.66', '2.39', '3.43'],
    ['8.0', '1.44', '2.07', '2.98', '4.28'],
    ['8.1', '1.80', '2.60', '3.73', '5.32'],
    ['8.2', '2.26', '3.25', '4.65', '6.61'],
    ['8.3', '2.83', '4.06', '5.78', '8.18'],
    ['8.4', '3.54', '5.05', '7.17', '10.10'],
    ['8.5', '4.41', '6.28', '8.87', '12.40'],
  ],
  misprints: [],
};

export const unionisedPercentTemperatures = [10, 15, 20, 25] as const;
export const unionisedPercentSalinity = 34;
