import { bareZero } from '../../../src/engine/rules/bareZero.js';
import type { Finding } from '../../../src/engine/rules/finding.js';
import { dailyLog, days, firstTest } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated`;

function found(cells: readonly (string | number)[]): readonly Finding[] {
  return bareZero.find(treatmentFrom(dailyLog('Date | Copper', cells), card), new Set());
}

describe('bareZero', () => {
  it('warns of one inside a hold, with both answers', () => {
    expect(found([...days(10), 0, ...days(10)])).toEqual([
      expect.objectContaining({
        code: 'bare-zero',
        severity: 'warning',
        row: 12,
        when: firstTest + 10,
        ifZero: { kind: 'running', days: 9 },
        ifUntested: { kind: 'running', days: 20 },
      }),
    ]);
  });

  it('warns of one at the end', () => {
    expect(found([...days(10), 0])).toMatchObject([{ row: 12, ifZero: { kind: 'not complete' } }]);
  });

  it('names the lowest on which the answer hangs', () => {
    expect(found([...days(3), 0, ...days(3), 1.5, ...days(5), 0, ...days(2)])).toMatchObject([{ row: 15 }]);
  });

  it.each([
    ['zeros before the band was reached', [0, 0, 1.2, ...days(5)]],
    ['a zero where empty cells arrive as such', [...days(5), '', 0, ...days(5)]],
    ['a zero written out', [...days(5), '0 mg/L', ...days(5)]],
    ['a zero after a hold that was long enough', [...days(31), 0.5, 0]],
    ['a zero in a hold that was broken later', [...days(3), 0, ...days(3), 1.5, ...days(5)]],
  ])('is silent about %s', (_, cells) => {
    expect(found(cells)).toEqual([]);
  });
});
