import * as fc from 'fast-check';
import { copperMgPerLitre, litres } from '../../../src/engine/units/quantity.js';
import { changeToLower } from '../../../src/engine/water/changeToLower.js';
import { levelAfterChange } from '../../../src/engine/water/levelAfterChange.js';

const change = (volume: number, level: number, wanted: number, replacement = 0) =>
  changeToLower({
    volume: litres(volume),
    level: copperMgPerLitre(level),
    wanted: copperMgPerLitre(wanted),
    replacement: copperMgPerLitre(replacement),
  });

describe('changeToLower', () => {
  it('is 40 L of 200 from 2.5 to 2', () => {
    // 200 L × 0.5 ÷ 2.5 = 40 L
    expect(change(200, 2.5, 2)).toEqual({ ok: true, value: 40 });
  });

  it('is more where the replacement water brings copper', () => {
    // 200 L × 0.5 ÷ (2.5 − 1.5) = 100 L
    expect(change(200, 2.5, 2, 1.5)).toEqual({ ok: true, value: 100 });
  });

  it('is 0 where the level is the wanted one, whatever the replacement water', () => {
    expect(change(200, 2, 2)).toEqual({ ok: true, value: 0 });
    expect(change(200, 0, 0)).toEqual({ ok: true, value: 0 });
    expect(change(200, 2, 2, 2.5)).toEqual({ ok: true, value: 0 });
    expect(change(200, 0.3, 0.1 + 0.2, 0.1)).toEqual({ ok: true, value: 0 });
  });

  it('refuses to raise', () => {
    const problem = { code: 'raising-by-change', wanted: 2.5, level: 2 };
    expect(change(200, 2, 2.5)).toEqual({ ok: false, problem });
    expect(change(200, 2, 2.5, 3)).toEqual({ ok: false, problem });
  });

  it.each([
    [2.5, 2, 2],
    [2.5, 2, 2.2],
    [2.5, 2, 3],
    [2.5, 0, 0],
  ])('refuses from %d to %d with replacement water of %d', (level, wanted, replacement) => {
    expect(change(200, level, wanted, replacement)).toEqual({
      ok: false,
      problem: { code: 'not-above-replacement', wanted, replacement },
    });
  });

  it('applied, lands on the wanted level', () => {
    const part = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.double({ min: 0.01, max: 20, noNaN: true }),
        part,
        part,
        (volume, level, between, replacementPart) => {
          const replacement = level * replacementPart;
          const wanted = replacement + (level - replacement) * between;
          const litresToChange = change(volume, level, wanted, replacement);
          if (!litresToChange.ok) throw new Error(litresToChange.problem.code);
          const after = levelAfterChange({
            volume: litres(volume),
            level: copperMgPerLitre(level),
            change: litresToChange.value,
            replacement: copperMgPerLitre(replacement),
          });
          return after.ok && Math.abs(after.value - wanted) <= 1.01e-9;
        },
      ),
    );
  });
});
