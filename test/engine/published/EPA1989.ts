import type { PublishedTable } from './publishedTable.js';

/** Total ammonia that holds 0.233 mg/L NH3, the acute salt-water criterion. From somebody else's reproduction. */
export const acuteTotalAmmonia: PublishedTable = {
  source: { key: 'EPA1989', at: 'total ammonia at the acute criterion, salinity 30, pH 8.0' },
  basis: 'mg/L total ammonia as NH3, two significant digits',
  columns: ['temperature [°C]', 'total ammonia [mg/L]'],
  rows: [
    ['0', '31'],
    ['5', '21'],
    ['10', '15'],
    ['15', '10'],
    ['20', '7.5'],
    ['25', '5.0'],
    ['30', '3.5'],
    ['35', '2.5'],
  ],
  misprints: [
    {
      row: 4,
      printed: '7.5',
      shouldBe: '7.2',
      why: "the table's own formula gives 7.17; every other cell of the row agrees with it",
    },
  ],
};

export const acuteTotalAmmoniaSalinity = 30;
export const acuteTotalAmmoniaPh = 8.0;
export const acuteCriterion = 0.233;
