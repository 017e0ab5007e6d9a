import * as fc from 'fast-check';
import { copperMgPerLitre, fraction } from '../../../src/engine/units/quantity.js';
import { changesToClear } from '../../../src/engine/water/changesToClear.js';
import { changesFromTwentyHundredths } from '../published/Dilution.js';
import { eachRow } from '../published/publishedTable.js';

const changes = (level: number, wanted: number, share: number) =>
  changesToClear({ level: copperMgPerLitre(level), wanted: copperMgPerLitre(wanted), share: fraction(share) });

describe('changesToClear', () => {
  it('matches the worked numbers of changes', () => {
    eachRow(changesFromTwentyHundredths, ([level = 0, wanted = 0, share = 0, count]) => {
      expect(changes(level, wanted, share)).toEqual({ ok: true, value: count });
    });
  });

  it('is 0 where the level is at or below the wanted one', () => {
    expect(changes(0.01, 0.01, 0.5)).toEqual({ ok: true, value: 0 });
    expect(changes(0.005, 0.01, 0.5)).toEqual({ ok: true, value: 0 });
    expect(changes(0.1 + 0.2, 0.3, 0.5)).toEqual({ ok: true, value: 0 });
    expect(changes(0, 0, 0.5)).toEqual({ ok: true, value: 0 });
  });

  it.each([
    [2, 1, 0.5, 1],
    [2, 0.5, 0.5, 2],
    [2, 0.25, 0.5, 3],
    [1, 0.421875, 0.25, 3],
    [1, 0.001, 0.9, 3],
  ])('counts a change that lands just on the wanted level: %d to %d by %d', (level, wanted, share, count) => {
    expect(changes(level, wanted, share)).toEqual({ ok: true, value: count });
  });

  it('is 1 where everything is changed', () => {
    expect(changes(2, 0, 1)).toEqual({ ok: true, value: 1 });
  });

  it('is finite to 0', () => {
    // 2 × 0.5^n ≤ 1e-9 from n = 31 on: 2^31 = 2147483648
    expect(changes(2, 0, 0.5)).toEqual({ ok: true, value: 31 });
  });

  it('counts very small changes without a loop', () => {
    // (ln 2 − 1e-9) ÷ 1e-12 = 693147180560 − 1000
    const tiny = changes(2, 1, 1e-12);
    expect(tiny.ok && Math.abs(tiny.value - 693147179560) < 10).toBe(true);
    expect(changes(2, 1, 1e-17)).toEqual({ ok: false, problem: { code: 'answer-too-large' } });
    expect(changes(2, 1, 5e-324)).toEqual({ ok: false, problem: { code: 'answer-too-large' } });
  });

  it('is the least number that reaches the wanted level', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        (level, wanted, share) => {
          const result = changes(level, wanted, share);
          if (!result.ok) throw new Error(result.problem.code);
          let left = level;
          let count = 0;
          while (left > wanted + 1e-9) {
            left *= 1 - share;
            count += 1;
          }
          // A level that lands on the limit to the last bits may count either way.
          if (result.value !== count)
            expect(Math.abs(level * (1 - share) ** count - wanted - 1e-9)).toBeLessThan(1e-14);
          expect(Math.abs(result.value - count)).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});
