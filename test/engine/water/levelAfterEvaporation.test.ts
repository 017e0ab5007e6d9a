import { copperMgPerLitre, litres } from '../../../src/engine/units/quantity.js';
import { levelAfterEvaporation } from '../../../src/engine/water/levelAfterEvaporation.js';

const after = (full: number, level: number, lost: number) =>
  levelAfterEvaporation({ full: litres(full), level: copperMgPerLitre(level), lost: litres(lost) });

describe('levelAfterEvaporation', () => {
  it('rises as the same copper is left in less water', () => {
    // 2 mg/L × 200 L ÷ 160 L = 2.5 mg/L
    expect(after(200, 2, 40)).toEqual({ ok: true, value: 2.5 });
    expect(after(200, 0, 40)).toEqual({ ok: true, value: 0 });
  });

  it.each([200, 200.5])('refuses to lose %d L of 200', (lost) => {
    expect(after(200, 2, lost)).toEqual({
      ok: false,
      problem: {
        code: 'not-below',
        field: 'lost',
        given: String(lost),
        limitField: 'full volume',
        limit: '200',
        unit: 'L',
      },
    });
  });
});
