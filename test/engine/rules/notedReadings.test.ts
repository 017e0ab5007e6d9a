import type { Finding } from '../../../src/engine/rules/finding.js';
import { notedReadings } from '../../../src/engine/rules/notedReadings.js';
import { treatmentFrom } from './treatmentFrom.js';

function found(rows: readonly string[]): readonly Finding[] {
  const log = ['Date | Copper', ...rows].join('\n');
  return notedReadings.find(treatmentFrom(log, 'volume | 200 L\nform | chelated'), new Set());
}

describe('notedReadings', () => {
  it('notes approximate readings in one row', () => {
    expect(found(['2026-03-01 08:00 | ~2.1', '2026-03-02 08:00 | 2.2', '2026-03-03 08:00 | 2.1?'])).toEqual([
      expect.objectContaining({ code: 'noted-readings', severity: 'note', kind: 'approximate', row: 2, rows: [2, 4] }),
    ]);
  });

  it('notes readings set aside', () => {
    expect(found(['2026-03-01 08:00 | 2.2', '2026-03-02 08:00 | void 1.62'])).toMatchObject([
      { kind: 'voided', row: 3, rows: [3] },
    ]);
  });

  it('notes readings with a date alone', () => {
    expect(found(['2026-03-01 | 2.2', '2026-03-02 | 2.2'])).toMatchObject([
      { kind: 'date only', row: 2, rows: [2, 3] },
    ]);
  });

  it('gives each sort its own', () => {
    expect(found(['2026-03-01 | ~2.2', '2026-03-02 09:00 | void 2'])).toMatchObject([
      { kind: 'approximate', row: 2 },
      { kind: 'voided', row: 3 },
      { kind: 'date only', row: 2 },
    ]);
  });

  it.each([
    ['bare readings with their time', ['2026-03-01 08:00 | 2.2', '2026-03-02 08:00 | 2.2 ppm']],
    ['bounds and ranges', ['2026-03-01 08:00 | <0.05', '2026-03-02 08:00 | 2.0-2.25']],
    ['a date alone without a test', ['2026-03-01 |', '2026-03-02 08:00 | 2.2']],
  ])('is silent about %s', (_, rows) => {
    expect(found(rows)).toEqual([]);
  });
});
