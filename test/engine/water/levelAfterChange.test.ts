import { copperMgPerLitre, litres, type CopperMgPerLitre } from '../../../src/engine/units/quantity.js';
import { levelAfterChange } from '../../../src/engine/water/levelAfterChange.js';
import { shareLeft } from '../published/Dilution.js';
import { eachRow, expectPrinted } from '../published/publishedTable.js';

const after = (volume: number, level: number, change: number, replacement = 0) =>
  levelAfterChange({
    volume: litres(volume),
    level: copperMgPerLitre(level),
    change: litres(change),
    replacement: copperMgPerLitre(replacement),
  });

describe('levelAfterChange', () => {
  it('leaves three quarters after a quarter is changed', () => {
    // 2 mg/L × 150 L ÷ 200 L = 1.5 mg/L
    expect(after(200, 2, 50)).toEqual({ ok: true, value: 1.5 });
  });

  it('mixes in what the replacement water brings', () => {
    // (2 × 150 + 1 × 50) ÷ 200 = 1.75 mg/L
    expect(after(200, 2, 50, 1)).toEqual({ ok: true, value: 1.75 });
    expect(after(200, 2, 50, 2)).toEqual({ ok: true, value: 2 });
    expect(after(200, 0, 50, 2)).toEqual({ ok: true, value: 0.5 });
  });

  it('is the replacement level after the whole volume is changed', () => {
    expect(after(200, 2, 200, 0.3)).toEqual({ ok: true, value: 0.3 });
    expect(after(189.2705892, 2, 189.2705892, 0)).toEqual({ ok: true, value: 0 });
  });

  it('matches what equal changes leave', () => {
    eachRow(shareLeft, ([share = 0, changes = 0], [, , left = '']) => {
      let level = copperMgPerLitre(1);
      for (let n = 0; n < changes; n++) level = leftAfter(level, share);
      expectPrinted(level, left);
    });
  });

  it('refuses to change more than there is', () => {
    expect(after(200, 2, 201)).toEqual({
      ok: false,
      problem: { code: 'more-than', field: 'change', given: '201', limitField: 'volume', limit: '200', unit: 'L' },
    });
  });
});

function leftAfter(level: CopperMgPerLitre, share: number): CopperMgPerLitre {
  const result = after(100, level, 100 * share);
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
}
