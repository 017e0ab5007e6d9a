import * as fc from 'fast-check';
import { centimetres, litres } from '../../../src/engine/units/quantity.js';
import { netVolume } from '../../../src/engine/volume/netVolume.js';

const tank = { length: 100, width: 50, waterDepth: 40, sandDepth: 0, displaced: 0, plus: 0 };
const net = (change: Partial<typeof tank> = {}) => {
  const { length, width, waterDepth, sandDepth, displaced, plus } = { ...tank, ...change };
  return netVolume({
    length: centimetres(length),
    width: centimetres(width),
    waterDepth: centimetres(waterDepth),
    sandDepth: centimetres(sandDepth),
    displaced: litres(displaced),
    plus: litres(plus),
  });
};

describe('netVolume', () => {
  it('is the inside box up to the water line', () => {
    // 100 × 50 × 40 cm = 200,000 cm³ = 200 L
    expect(net()).toEqual({ ok: true, value: 200 });
  });

  it('takes sand as 60 % solid', () => {
    // 100 × 50 × 5 cm = 25 L of sand, 15 L of it solid
    expect(net({ sandDepth: 5 })).toEqual({ ok: true, value: 185 });
  });

  it('takes off what rock displaces and adds what sump and pipes hold', () => {
    // 200 − 15 − 12 + 30 = 203 L
    expect(net({ sandDepth: 5, displaced: 12, plus: 30 })).toEqual({ ok: true, value: 203 });
  });

  it('counts the water between the grains of sand as deep as the water', () => {
    // 200 L × (1 − 0.6) = 80 L
    expect(net({ sandDepth: 40 })).toEqual({ ok: true, value: 80 });
  });

  it('refuses sand deeper than the water', () => {
    expect(net({ sandDepth: 40.5 })).toEqual({
      ok: false,
      problem: {
        code: 'more-than',
        field: 'sand depth',
        given: '40.5',
        limitField: 'water depth',
        limit: '40',
        unit: 'cm',
      },
    });
  });

  it('refuses a tank in which no water is left', () => {
    expect(net({ displaced: 200 })).toEqual({ ok: false, problem: { code: 'no-water-left', litres: 0 } });
    expect(net({ displaced: 230, plus: 20 })).toEqual({ ok: false, problem: { code: 'no-water-left', litres: -10 } });
  });

  it('takes out exactly the solid part of the sand, whatever the tank', () => {
    const side = fc.double({ min: 1, max: 500, noNaN: true });
    fc.assert(
      fc.property(side, side, side, fc.double({ min: 0, max: 1, noNaN: true }), (length, width, waterDepth, part) => {
        const bare = net({ length, width, waterDepth });
        const sandy = net({ length, width, waterDepth, sandDepth: waterDepth * part });
        if (!bare.ok || !sandy.ok) throw new Error('a box with sand no deeper than its water holds water');
        expect(bare.value - sandy.value).toBeCloseTo(0.6 * part * bare.value, 6);
      }),
    );
  });
});
