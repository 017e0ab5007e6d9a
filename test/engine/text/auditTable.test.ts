import { auditFindings } from '../../../src/engine/audit/auditFindings.js';
import { auditTable } from '../../../src/engine/text/auditTable.js';
import { dailyLog, days, firstTest } from '../rules/dailyLog.js';
import { treatmentFrom } from '../rules/treatmentFrom.js';

const card = `volume | 200 L
form | chelated`;

function table(cells: readonly (string | number)[]): readonly (readonly unknown[])[] {
  const treatment = treatmentFrom(dailyLog('Date | Copper', cells), card);
  const { columns, rows } = auditTable(auditFindings(treatment));
  for (const row of rows) expect(row).toHaveLength(columns.length);
  return rows;
}

describe('auditTable', () => {
  it('has the verdict alone for a log without a fault', () => {
    const rows = table([2.25, 2.24, 2.26, 2.25, 2.23, 2.25]);
    expect(rows.map(([severity, when, row]) => [severity, when, row])).toEqual([
      ['verdict', '', ''],
      ['verdict', '', ''],
      ['verdict', '', ''],
      ['verdict', '', ''],
    ]);
    expect(rows[0]?.[3]).toMatch(/^running: 5\.0 days of 30 /);
  });

  it('orders by severity, then by row, each with its words and source', () => {
    const rows = table([...days(4, 2.25), 1.9, ...days(3, 2.25), '', '', 2.25, '~2.24', 2.25]);
    const held = rows.filter(([severity]) => severity !== 'verdict');
    expect(held.map(([severity, when, row]) => [severity, when, row])).toEqual([
      ['danger', firstTest + 4, 6],
      ['warning', firstTest + 4, 6],
      ['warning', firstTest + 10, 12],
      ['note', firstTest + 11, 13],
    ]);
    expect(held[0]?.[3]).toMatch(/^Hold broken: 1\.9 mg\/L is below 1\.95 mg\/L; 3\.0 days lost /);
    for (const row of rows) expect(row[5]).toBe('common practice, no published source');
  });

  it('keeps the verdict first where it names a row', () => {
    const rows = table([...days(4, 2.25), 'LOW', ...days(3, 2.25)]);
    expect(rows.map(([severity, , row]) => [severity, row])).toEqual([
      ['verdict', 6],
      ['verdict', ''],
      ['verdict', ''],
      ['verdict', ''],
      ['warning', 6],
      ['note', 7],
    ]);
  });
});
