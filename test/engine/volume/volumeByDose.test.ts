import * as fc from 'fast-check';
import { copperRise } from '../../../src/engine/dose/copperRise.js';
import { copperMgPerLitre, copperMgPerMl, litres, millilitres } from '../../../src/engine/units/quantity.js';
import { volumeByDose } from '../../../src/engine/volume/volumeByDose.js';

const volume = (added: number, strength: number, before: number, after: number, accuracy = 0.05) =>
  volumeByDose({
    added: millilitres(added),
    strength: copperMgPerMl(strength),
    before: copperMgPerLitre(before),
    after: copperMgPerLitre(after),
    accuracy: copperMgPerLitre(accuracy),
  });

describe('volumeByDose', () => {
  it('is 200 L where 10 mL of 10 mg/mL raise it by 0.5', () => {
    // 10 mL × 10 mg/mL ÷ 0.5 mg/L = 200 L
    expect(volume(10, 10, 1, 1.5)).toEqual({ ok: true, value: 200 });
  });

  it('takes a rise of exactly six times the accuracy', () => {
    // 6 × 0.05 = 0.3; 1.3 − 1 is a little more than 0.3 in binary, 2.3 − 2 a little less
    expect(volume(10, 10, 1, 1.3).ok).toBe(true);
    expect(volume(10, 10, 2, 2.3).ok).toBe(true);
    expect(volume(10, 10, 0, 0.06, 0.01).ok).toBe(true);
  });

  it('has no answer for a smaller rise', () => {
    const result = volume(10, 10, 1, 1.29);
    expect(result).toMatchObject({ ok: false, problem: { code: 'rise-too-small' } });
    if (result.ok || result.problem.code !== 'rise-too-small') throw new Error('expected a rise too small');
    expect(result.problem.rise).toBeCloseTo(0.29, 12);
    expect(result.problem.needed).toBeCloseTo(0.3, 12);
  });

  it.each([
    [1, 1],
    [1.5, 1],
    [1, 1 + 1e-10],
  ])('has no answer from %d to %d however good the test', (before, after) => {
    expect(volume(10, 10, before, after, 1e-12)).toMatchObject({ ok: false, problem: { code: 'rise-too-small' } });
  });

  it('is the inverse of copperRise', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.double({ min: 0.2, max: 100, noNaN: true }),
        (litresOfTank, strength) => {
          const tank = litres(litresOfTank);
          const added = millilitres(litresOfTank / strength);
          const rise = copperRise({ volume: tank, added, strength: copperMgPerMl(strength) });
          const result = volume(added, strength, 0, rise);
          expect(result.ok && Math.abs(result.value - tank) <= 1e-9 * tank).toBe(true);
        },
      ),
    );
  });
});
