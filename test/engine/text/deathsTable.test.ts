import { deathsByLot } from '../../../src/engine/audit/deathsByLot.js';
import { deathsTable } from '../../../src/engine/text/deathsTable.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

const table = (log: string) => {
  const lots = deathsByLot(treatmentFrom(log, 'volume | 200 L\nform | chelated'));
  if (!lots.ok) throw new Error(JSON.stringify(lots.problem));
  return deathsTable(lots.value);
};

describe('deathsTable', () => {
  it('stands beside the published yardstick, whose counts join no sum', () => {
    const { rows } = table(`Date | Copper | Fish in | Dead
2026-03-01 | 2.25 | 40 |
2026-03-05 | 2.25 | | 1`);
    expect(rows[0]).toEqual(['all', 40, 0, 0, 1, 0, 39, 2.5]);
    // Zec, Hadfield, Hungerford (2021), abstract [seen]: 199 of 4,835 died, 4.1 %; 48 of the 199 while raising, 24.1 %.
    expect((100 * 199) / 4835).toBeCloseTo(4.1, 1);
    expect((100 * 48) / 199).toBeCloseTo(24.1, 1);
    expect(rows[1]?.slice(1)).toEqual(['', '', '', '', '', '', 4.1]);
    expect(rows[1]?.[0]).toMatch(/199 of 4,835.*24\.1 %.*7\.7 %.*3\.3 %.*Zec, Hadfield, Hungerford 2021/);
    expect(rows).toHaveLength(2);
  });

  it('has a row none where there is nothing to list', () => {
    expect(table('Date | Copper | Dead\n2026-03-01 | 2.25 |').rows[0]).toEqual(['none', '', '', '', '', '', '', '']);
  });
});
