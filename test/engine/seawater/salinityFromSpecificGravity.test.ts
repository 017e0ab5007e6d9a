import * as fc from 'fast-check';
import { salinityFromSpecificGravity } from '../../../src/engine/seawater/salinityFromSpecificGravity.js';
import { specificGravityOfSeawater } from '../../../src/engine/seawater/specificGravityOfSeawater.js';
import { celsius, practicalSalinity, specificGravity } from '../../../src/engine/units/quantity.js';

const salinity = (gravity: number, temperature: number, reference: number) =>
  salinityFromSpecificGravity({
    specificGravity: specificGravity(gravity),
    temperature: celsius(temperature),
    reference: celsius(reference),
  });

function thereAndBack(s: number, temperature: number, reference: number): number {
  const t = celsius(temperature);
  const forward = specificGravityOfSeawater({
    salinity: practicalSalinity(s),
    temperature: t,
    reference: celsius(reference),
  });
  if (!forward.ok) throw new Error(forward.problem.code);
  const back = salinity(forward.value, temperature, reference);
  if (!back.ok) throw new Error(back.problem.code);
  return back.value;
}

describe('salinityFromSpecificGravity', () => {
  it('reads 35 from the specific gravity of salinity 35', () => {
    // 1.02637 is printed to 0.00001, which is 0.013 g/kg at 0.00075 per g/kg.
    const result = salinity(1.02637, 25, 25);
    expect(result.ok && Math.abs(result.value - 35)).toBeLessThan(0.007);
  });

  it('inverts specificGravityOfSeawater to 1e-9 g/kg over its whole range', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 42, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (s, t, reference) => Math.abs(thereAndBack(s, t, reference) - s) < 1e-9,
      ),
      { numRuns: 2000 },
    );
  });

  it('takes both ends of the range, whatever the rounding', () => {
    for (let t = 0; t <= 40; t += 0.25) {
      for (const reference of [0, 15.5556, 20, 25, 40]) {
        expect(thereAndBack(0, t, reference)).toBeCloseTo(0, 9);
        expect(thereAndBack(42, t, reference)).toBeCloseTo(42, 9);
        expect(thereAndBack(0, t, reference)).toBeGreaterThanOrEqual(0);
        expect(thereAndBack(42, t, reference)).toBeLessThanOrEqual(42);
      }
    }
  });

  it('reads 0 from pure water', () => {
    expect(salinity(1, 25, 25)).toEqual({ ok: true, value: 0 });
  });

  it('names the specific gravities it accepts at this temperature, rounded inwards', () => {
    for (const gravity of [0.98, 1.2, 35]) {
      const result = salinity(gravity, 25, 25);
      expect(result).toMatchObject({
        ok: false,
        problem: {
          code: 'outside-validity',
          field: 'specific gravity',
          given: gravity,
          unit: '',
          source: 'FofonoffMillard1983',
        },
      });
      if (result.ok || result.problem.code !== 'outside-validity') throw new Error('unexpected');
      const { min, max } = result.problem;
      expect(min).toBe(1);
      expect(max).toBe(Number(max.toFixed(5)));
      const top = salinity(max, 25, 25);
      expect(top.ok && top.value).toBeGreaterThan(41.98);
      expect(salinity(max + 0.00002, 25, 25).ok).toBe(false);
    }
  });

  it.each([
    ['temperature', -0.5, 25],
    ['temperature', 40.5, 25],
    ['reference', 25, -0.5],
    ['reference', 25, 40.5],
  ] as const)('refuses %s outside 0-40 °C', (field, t, reference) => {
    expect(salinity(1.026, t, reference)).toMatchObject({
      ok: false,
      problem: { code: 'outside-validity', field, min: 0, max: 40 },
    });
  });
});
