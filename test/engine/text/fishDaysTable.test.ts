import { fishDays } from '../../../src/engine/audit/fishDays.js';
import { fishDaysColumns, fishDaysTable } from '../../../src/engine/text/fishDaysTable.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

const table = (log: string, card: string) => {
  const treatment = treatmentFrom(log, `volume | 200 L\nform | chelated\ndays | 3\n${card}`);
  const rows = fishDays(treatment);
  if (!rows.ok) throw new Error(JSON.stringify(rows.problem));
  return fishDaysTable({ rows: rows.value, wanted: treatment.card.days });
};

describe('fishDaysTable', () => {
  it('writes numbers or nothing, and notes', () => {
    const log = `Date | Copper | Fish in | Fish out | Dead
2026-03-01 | 2.25 | yellow tang, 3 chromis | |
2026-03-02 | 2.25 | | | 1 chromis
2026-03-04 | 2.25 | wrasse | |
2026-03-05 | 2.25 | | tang (sold) |`;
    expect(table(log, 'fish | foxface')).toEqual({
      columns: fishDaysColumns,
      rows: [
        ['foxface', '', '', '', 'no arrival, so no days: write when it came in'],
        ['yellow tang', 46082, 4, 46085, '3 days reached; sold 2026-03-05 00:00'],
        ['3 chromis', 46082, 4, 46085, '3 days reached; 1 of 3 died 2026-03-02 00:00'],
        ['wrasse', 46085, 1, 46088, ''],
      ],
    });
  });

  it('says where the count began anew, where no hold runs, and which row is unclear', () => {
    const log = `Date | Copper | Fish in | Dead
2026-03-01 | 2.25 | yellow tang |
2026-03-02 | 2.25 | wrasse |
2026-03-03 | 1.5 | | 1`;
    const notes = table(log, 'newcomers | restart').rows.map((row) => row[4]);
    expect(notes).toEqual([
      'counted from the newcomer of 2026-03-02 00:00; no hold is running; row 4 does not say which fish died',
      'no hold is running; row 4 does not say which fish died',
    ]);
  });
});
