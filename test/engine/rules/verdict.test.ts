import fc from 'fast-check';
import { holdDays } from '../../../src/engine/hold/holdDays.js';
import { holdSpans } from '../../../src/engine/hold/holdSpans.js';
import { traceHolds } from '../../../src/engine/hold/holdTracer.js';
import { zeroOrUntested } from '../../../src/engine/hold/zeroOrUntested.js';
import { ok } from '../../../src/engine/result/result.js';
import { verdict } from '../../../src/engine/rules/verdict.js';
import { findingText } from '../../../src/engine/text/findingText.js';
import { isoFromSerial } from '../../../src/base/isoFromSerial.js';
import { oracleHold } from '../hold/oracle.js';
import { dailyLog, days, firstTest } from './dailyLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const card = `volume | 200 L
form | chelated`;

/** The lines of the verdict in words. */
function lines(cells: readonly (string | number)[], terms = '', asOf?: string): readonly string[] {
  const treatment = treatmentFrom(dailyLog('Date | Copper', cells), `${card}\n${terms}`, asOf);
  return verdict.find(treatment, new Set()).map((finding) => findingText(finding).finding);
}

describe('verdict', () => {
  it('is complete where a hold was long enough', () => {
    expect(lines([0, 1, ...days(32), 0.5])).toEqual([
      expect.stringMatching(/^complete: 31\.0 days of 30 /),
      'Days held: 31.0 days, from 2026-03-03 08:00 to 2026-04-03 08:00.',
      'No breaks.',
      'No untested stretch of over 36 h.',
    ]);
  });

  it('is running where a hold runs', () => {
    expect(lines([...days(5), 1.8, ...days(3), '', '', ...days(5), '', '', '', '', ...days(9)])).toEqual([
      'running: 8.0 days of 30 unbroken so far.',
      'Days held: 8.0 days, from 2026-03-21 08:00 to 2026-03-29 08:00.',
      '1 break (row 7), 4.0 days lost.',
      '2 untested stretches of over 36 h, the longest 120.0 h; the hold started again after 1 of them, 9.0 days lost.',
    ]);
  });

  it('is not complete where none runs', () => {
    expect(lines([...days(5), 1.8])).toEqual([
      expect.stringMatching(/^not complete: /),
      'Days held: 0.0 now; the longest hold was 4.0 days, from 2026-03-01 08:00 to 2026-03-05 08:00.',
      '1 break (row 7), 4.0 days lost.',
      'No untested stretch of over 36 h.',
    ]);
    expect(lines([0, 1])[0]).toMatch(/^not complete: /);
    expect(lines(['none', ''])[0]).toBe('not complete: there is no reading.');
  });

  it('is open because of the lowest row on which the answer hangs, and gives both', () => {
    const treatment = treatmentFrom(dailyLog('Date | Copper', ['ok', ...days(10), 'LOW', ...days(3), 'ok', 2.2]), card);
    const [first, second] = verdict.find(treatment, new Set());
    expect(first).toMatchObject({ severity: 'verdict', row: 13, when: firstTest + 11 });
    expect(first && findingText(first).finding).toMatch(
      /^open because of row 13: running, 15\.0 days .*running, 0\.0 days/,
    );
    expect(second).toMatchObject({ severity: 'verdict', row: null });
    expect(lines([...days(10), 0, ...days(3)])[0]).toMatch(/^open because of row 12: running, 13\.0 days .* 2\.0 days/);
  });

  it('names the cell that decides, not one before it', () => {
    expect(lines([...days(3), 'LOW', ...days(20), 'LOW', ...days(20)])[0]).toMatch(/^open because of row 26: complete/);
  });

  it.each([
    ['the days are reached either way', [...days(35), 'LOW', ...days(3)], 'complete'],
    ['the cell lies before the hold', [0, 'LOW', ...days(3)], 'running'],
    ['the cell lies in a hold that was broken since', [...days(3), 'LOW', 2.2, 1.8, ...days(4)], 'running'],
    ['no hold runs either way', [...days(3), 'LOW', ...days(3), 1.8], 'not complete'],
  ])('is not open where %s', (_, cells, kind) => {
    expect(lines(cells)[0]).toMatch(new RegExp(`^${kind}: `));
  });

  it('goes to the moment asked for, at most 36 h past the last test', () => {
    expect(lines(days(6), '', '2026-03-03 20:00')[0]).toMatch(/^running: 2\.5 days/);
    expect(lines(days(30), '', '2026-04-02 08:00')).toEqual([
      expect.stringMatching(/^running: 30\.5 days of 30, of which the last are past the last test/),
      expect.stringMatching(/^Days held: 30\.5 days, .*, 36\.0 h of them past the last test\.$/),
      'No breaks.',
      'No untested stretch of over 36 h.',
    ]);
  });

  describe('agrees with the functions of the hold', () => {
    const cell = fc.constantFrom<string | number>(2.25, 2.25, 2.25, 2.2, 1.95, 1.94, 2.9, 0.4, 0, '', '<3', '~2.1');
    const logs = fc.array(fc.record({ gap: fc.integer({ min: 0, max: 130 }), cell }), { minLength: 1, maxLength: 25 });
    const terms = fc.record({
      longestGap: fc.constantFrom(24, 48, 96, 'none'),
      confirm: fc.constantFrom(1, 2),
      days: fc.constantFrom(1, 3, 10),
      arrivedAfter: fc.option(fc.integer({ min: 0, max: 40 }), { nil: null }),
      askedAfter: fc.option(fc.integer({ min: 0, max: 60 }), { nil: null }),
    });
    const at = (hours: number): string => isoFromSerial(firstTest + hours / 24);

    it('on every log, for every longest gap, confirm, arrival and moment', () => {
      const kinds = new Map<string, number>();
      fc.assert(
        fc.property(logs, terms, (rows, { longestGap, confirm, days: wanted, arrivedAfter, askedAfter }) => {
          let hours = 0;
          const written = rows.map((row) => `${at((hours += row.gap))} | ${row.cell}`).join('\n');
          const treatment = treatmentFrom(
            `Date | Copper\n${written}`,
            [card, `longest gap | ${longestGap}`, `confirm | ${confirm}`, `days | ${wanted}`]
              .concat(arrivedAfter === null ? [] : `arrived | ${at(arrivedAfter * 24)}`)
              .join('\n'),
            askedAfter === null ? undefined : at(askedAfter * 24),
          );
          const { readings, terms: asked } = treatment;
          const [first] = verdict.find(treatment, new Set());
          if (first?.code !== 'verdict') throw new Error('no verdict');
          const text = findingText(first).finding;
          const spans = holdSpans(traceHolds(readings, asked), asked, wanted);
          const held = zeroOrUntested(readings, asked.low, (read) => holdDays(traceHolds(read, asked), asked));
          const listed = zeroOrUntested(readings, asked.low, (read) =>
            ok(
              holdSpans(traceHolds(read, asked), asked, wanted).map(({ from, to, enough, endedBy: { kind } }) => ({
                from,
                to,
                enough,
                kind,
              })),
            ),
          );
          const kind = first.open === null ? first.answer.kind : 'open';
          kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
          if (kind === 'open') {
            expect(text).toMatch(/^open because of row \d+: /);
            expect([held, listed].some((each) => !each.ok && each.problem.code === 'zero-or-untested')).toBe(true);
            return;
          }
          expect(text.startsWith(`${kind}: `)).toBe(true);
          expect(kind === 'complete').toBe(spans.some(({ enough }) => enough));
          if (kind === 'complete') {
            expect(spans.some(({ enough, days: lasted }) => enough && lasted <= first.answer.days)).toBe(true);
            return;
          }
          const isZeroOpen = !held.ok && held.problem.code === 'zero-or-untested';
          expect(isZeroOpen).toBe(false);
          expect(kind === 'running').toBe(spans.some(({ endedBy }) => endedBy.kind === 'running'));
          expect(held.ok ? held.value : 0).toBe(first.answer.days);
          const oracle = oracleHold(
            Array.from({ length: readings.count }, (_, index) => ({
              when: readings.when[index] ?? NaN,
              level: readings.low[index] ?? NaN,
            })),
            {
              low: asked.low,
              gapHours: longestGap === 'none' ? Infinity : Number(longestGap),
              confirm,
              ...moments(asked),
            },
          );
          expect(oracle === 'no reading' ? 0 : oracle.days).toBeCloseTo(first.answer.days, 9);
        }),
        { numRuns: 2000, seed: 20260301 },
      );
      for (const kind of ['complete', 'running', 'not complete', 'open']) expect(kinds.get(kind)).toBeGreaterThan(30);
    });
  });
});

function moments({ asOf, arrived }: { asOf?: number; arrived?: number }): { asOf?: number; arrived?: number } {
  return { ...(asOf === undefined ? {} : { asOf }), ...(arrived === undefined ? {} : { arrived }) };
}
