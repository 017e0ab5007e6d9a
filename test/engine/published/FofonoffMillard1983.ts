import type { PublishedTable } from './publishedTable.js';

/** Read in a stored copy. */
export const densityCheckValues: PublishedTable = {
  source: { key: 'FofonoffMillard1983', at: 'p. 19, check values at p = 0' },
  basis: 'practical salinity; temperature IPTS-68; one atmosphere',
  columns: ['salinity [1]', 'temperature [°C IPTS-68]', 'density [kg/m³]'],
  rows: [
    ['0', '5', '999.96675'],
    ['35', '5', '1027.67547'],
  ],
  misprints: [],
};

/** Derived from the printed coefficients, not printed in the source: specific gravity of salinity 35. */
export const specificGravityDerived: PublishedTable = {
  source: { key: 'FofonoffMillard1983', at: 'derived' },
  basis: 'temperatures ITS-90; 60 °F = 15.5556 °C',
  columns: ['salinity [1]', 'sample [°C]', 'reference [°C]', 'specific gravity'],
  rows: [
    ['35', '25', '25', '1.02637'],
    ['35', '20', '20', '1.02660'],
    ['35', '25', '15.5556', '1.02435'],
  ],
  misprints: [],
};
