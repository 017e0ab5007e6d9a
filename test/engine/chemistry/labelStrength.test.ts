import { labelStrength } from '../../../src/engine/chemistry/labelStrength.js';
import { copperMgPerLitre, litres, millilitres } from '../../../src/engine/units/quantity.js';

const strength = (dose: number, treats: number, raises: number) =>
  labelStrength({ dose: millilitres(dose), treats: litres(treats), raises: copperMgPerLitre(raises) });

describe('labelStrength', () => {
  it('is 10 mg/mL where 5 mL raises 100 L by 0.5 mg/L', () => {
    // 0.5 mg/L × 100 L ÷ 5 mL = 10 mg/mL
    expect(strength(5, 100, 0.5)).toEqual({ ok: true, value: 10 });
  });

  it('takes both limits as inside', () => {
    expect(strength(5, 10, 0.1)).toEqual({ ok: true, value: 0.2 });
    expect(strength(1, 100, 1)).toEqual({ ok: true, value: 100 });
    // 0.3 × 2 ÷ 3 is 0.2, a little less in binary
    expect(strength(3, 2, 0.3).ok).toBe(true);
  });

  it.each([
    [5, 9.99, 0.1, 0.1998],
    [1, 100.1, 1, 100.1],
  ])('refuses %d mL for %d L by %d mg/L', (dose, treats, raises, made) => {
    const result = strength(dose, treats, raises);
    expect(result).toMatchObject({ ok: false, problem: { code: 'strength-unlikely' } });
    if (!result.ok && result.problem.code === 'strength-unlikely')
      expect(result.problem.strength).toBeCloseTo(made, 12);
  });
});
