import type { Finding } from '../../../src/engine/rules/finding.js';
import { unreadableCells } from '../../../src/engine/rules/unreadableCells.js';
import { treatmentFrom } from './treatmentFrom.js';

function found(row: string, named: readonly number[] = []): readonly Finding[] {
  const log = `Date | Copper | Dose mL | Change L | Temp | pH\n${row}\n2026-03-02 08:00 | 2.2 | | | |`;
  return unreadableCells.find(
    treatmentFrom(log, 'volume | 200 L\nform | chelated\nstrength | 10 mg/mL'),
    new Set(named),
  );
}

describe('unreadableCells', () => {
  it.each([
    ['a dose', '2026-03-01 08:00 | 2.2 | a capful | | |', 'dose'],
    ['a change', '2026-03-01 08:00 | 2.2 | | some | |', 'change'],
  ])('warns of %s on which the level hangs', (_, row, kind) => {
    expect(found(row)).toMatchObject([{ code: 'unreadable-cell', severity: 'warning', row: 2, kind }]);
  });

  it('notes others', () => {
    expect(found('2026-03-01 08:00 | 2.2 | | | warm | 82')).toMatchObject([
      { code: 'unreadable-cell', severity: 'note', row: 2, kind: 'temperature' },
      { code: 'unreadable-cell', severity: 'note', row: 2, kind: 'pH' },
    ]);
  });

  it('warns of a row without a time', () => {
    expect(found('yesterday | 2.2 | | | |')).toMatchObject([
      { code: 'row-without-time', severity: 'warning', row: 2, when: null },
    ]);
  });

  it.each([
    ['cells that can be read', '2026-03-01 08:00 | 2.2 | 5 | 10% | 25 | 8.1'],
    ['blank cells', '2026-03-01 08:00 | 2.2 | | none | - |'],
    ['copper, which is another rule', '2026-03-01 08:00 | LOW | | | |'],
  ])('is silent about %s', (_, row) => {
    expect(found(row)).toEqual([]);
  });

  it('is silent where a cause is named', () => {
    expect(found('2026-03-01 08:00 | 2.2 | a capful | | |', [2])).toEqual([]);
  });
});
