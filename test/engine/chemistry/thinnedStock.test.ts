import { thinnedStock } from '../../../src/engine/chemistry/thinnedStock.js';
import { copperMgPerMl, millilitres } from '../../../src/engine/units/quantity.js';

const thinned = (strength: number, wanted: number, volume: number) =>
  thinnedStock({ strength: copperMgPerMl(strength), wanted: copperMgPerMl(wanted), volume: millilitres(volume) });

describe('thinnedStock', () => {
  it('takes 50 mL of 10 mg/mL for 500 mL of 1 mg/mL', () => {
    // 500 mL × 1 mg/mL ÷ 10 mg/mL = 50 mL
    expect(thinned(10, 1, 500)).toEqual({ ok: true, value: { stock: 50, water: 450 } });
  });

  it('takes no water where the strength is the wanted one', () => {
    expect(thinned(1.02, 1.02, 100)).toEqual({ ok: true, value: { stock: 100, water: 0 } });
  });

  it('refuses to make a solution stronger', () => {
    expect(thinned(1, 1.5, 100)).toEqual({
      ok: false,
      problem: {
        code: 'more-than',
        field: 'wanted strength',
        given: '1.5',
        limitField: 'strength',
        limit: '1',
        unit: 'mg/mL',
      },
    });
  });
});
