import fc from 'fast-check';
import { auditFindings } from '../../../src/engine/audit/auditFindings.js';
import type { Finding } from '../../../src/engine/rules/finding.js';
import { holdBroken } from '../../../src/engine/rules/holdBroken.js';
import { dailyLog, days, firstTest } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated
strength | 10 mg/mL`;

function found(cells: readonly (string | number)[], terms = '', named: readonly number[] = []): readonly Finding[] {
  return holdBroken.find(treatmentFrom(dailyLog('Date | Copper | Notes', cells), `${card}\n${terms}`), new Set(named));
}

/** Rows of the breaks that an audit finds, and those of the verdict's line. */
function both(cells: readonly (string | number)[], terms: string): { broken: unknown[]; counted: unknown } {
  const audit = auditFindings(treatmentFrom(dailyLog('Date | Copper | Notes', cells), `${card}\n${terms}`));
  const broken = audit.filter(({ code }) => code === 'hold-broken').map(({ row }) => row);
  const line = audit.find((finding) => finding.code === 'verdict-breaks');
  return { broken, counted: line?.code === 'verdict-breaks' ? line.rows : null };
}

describe('holdBroken', () => {
  it('names the row, the days lost and when the count starts again', () => {
    expect(found([...days(5), 1.8, ...days(3)])).toEqual([
      expect.objectContaining({
        code: 'hold-broken',
        severity: 'danger',
        row: 7,
        when: firstTest + 5,
        level: 1.8,
        days: 4,
        from: firstTest,
        again: firstTest + 6,
      }),
    ]);
  });

  it('gives each break its row', () => {
    const breaks = found([...days(5), 1.8, ...days(3), 1.7, 1.9, ...days(2)]);
    expect(breaks).toMatchObject([
      { row: 7, days: 4 },
      { row: 11, days: 2 },
    ]);
  });

  it('finds a break at the last reading, which nothing follows yet', () => {
    expect(found([...days(5), 1.9])).toMatchObject([{ row: 7, again: null, withinError: true }]);
  });

  it('takes a reading under a bound by its low end, and names the bound', () => {
    expect(found([...days(5), '<1.0', 2.2])).toMatchObject([{ row: 7, level: 1, isBound: true }]);
  });

  it('counts the days of the fish that came in during the hold', () => {
    expect(found([...days(5), 1.8, 2.2], 'arrived | 2026-03-03 08:00')).toMatchObject([{ row: 7, days: 2 }]);
  });

  it('is found beside another finding of its row where the reading fits the log', () => {
    const log = dailyLog('Date | Copper | Change L', [...days(5), '2.25 | 40', '1.8 | 10', 1.81, 1.79]);
    expect(holdBroken.find(treatmentFrom(log, card), new Set([8]))).toMatchObject([{ row: 8 }]);
  });

  it.each([
    ['lows while raising', [0, 0.6, 1.2, 1.8, ...days(4)]],
    ['lows after a hold that was long enough', [...days(31), 1.2, 0.4, 0.1]],
    ['a second raise after that', [...days(31), 0.4, ...days(4), 1.2]],
    ['copper taken out too early, which is another finding', [...days(12), 1.2, 0.4, 0.1]],
    ['the level crossing the limit while raising', [0, 1.2, 1.96, 1.94, ...days(4)]],
    ['a reading on the limit', [...days(4), 1.95, ...days(4)]],
    ['a level above the band', [...days(4), 2.9, ...days(4)]],
  ])('is silent about %s', (_, cells) => {
    expect(found(cells)).toEqual([]);
  });

  it('stands beside the slip that its row is named for, and says so', () => {
    const cells = [...days(5), 0.22, ...days(5)];
    expect(found(cells, '', [7])).toMatchObject([{ row: 7, slip: true }]);
    expect(found([...days(5), 1.8, ...days(5)])).toMatchObject([{ row: 7, slip: false }]);
  });

  it.each([
    ['a slip at the end', [...days(20), 0.02], '', 'break'],
    ['a hold of one reading that is a slip', [0, 0.56, 11.2, 1.68, ...days(4)], '', 'break'],
    ['the level crossing the limit while raising', [0, 1.2, 1.96, 1.94, ...days(4)], '', 'none'],
    ['copper taken out too early', [...days(12), 1.2, 0.4, 0.1], '', 'none'],
    ['a bound under which there may still be copper', [...days(4, 2.2), '<2'], '', 'break'],
  ])('agrees with the verdict about %s', (_, cells, terms, says) => {
    const { broken, counted } = both(cells, terms);
    expect(broken).toEqual(counted);
    expect(broken.length > 0 ? 'break' : 'none').toBe(says);
  });

  it('gives the rows that the verdict counts, whatever the readings', () => {
    const reading = fc.constantFrom(1.8, 1.9, 2.2);
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 1, maxLength: 40 }),
        fc.constantFrom('', 'days | 5'),
        (cells, terms) => {
          const { broken, counted } = both(cells, terms);
          expect(broken).toEqual(counted);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('is silent about a hold that was over before the arrival', () => {
    expect(found([...days(4), 1.8, ...days(5)], 'arrived | 2026-03-06')).toEqual([]);
  });
});
