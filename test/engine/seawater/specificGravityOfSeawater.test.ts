import { specificGravityOfSeawater } from '../../../src/engine/seawater/specificGravityOfSeawater.js';
import { celsius, practicalSalinity } from '../../../src/engine/units/quantity.js';
import { specificGravityDerived } from '../published/FofonoffMillard1983.js';
import { eachRow, expectPrinted } from '../published/publishedTable.js';

const gravity = (salinity: number, temperature: number, reference: number) =>
  specificGravityOfSeawater({
    salinity: practicalSalinity(salinity),
    temperature: celsius(temperature),
    reference: celsius(reference),
  });

function value(salinity: number, temperature: number, reference: number): number {
  const result = gravity(salinity, temperature, reference);
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
}

describe('specificGravityOfSeawater', () => {
  it('gives the values derived from FofonoffMillard1983', () => {
    eachRow(specificGravityDerived, ([s = NaN, t = NaN, reference = NaN], printed) =>
      expectPrinted(value(s, t, reference), printed[3] ?? ''),
    );
  });

  it('is 1 for pure water at the reference temperature', () => {
    expect(value(0, 25, 25)).toBe(1);
  });

  it('takes both ends of each range', () => {
    expect(value(0, 0, 0)).toBe(1);
    expect(value(42, 40, 40)).toBeGreaterThan(1.03);
    expect(value(42, 40, 0)).toBeGreaterThan(1.02);
  });

  it.each([
    ['salinity', -0.01, 25, 25, 0, 42, 'g/kg'],
    ['salinity', 42.01, 25, 25, 0, 42, 'g/kg'],
    ['temperature', 35, -0.01, 25, 0, 40, '°C'],
    ['temperature', 35, 40.01, 25, 0, 40, '°C'],
    ['reference', 35, 25, -0.01, 0, 40, '°C'],
    ['reference', 35, 25, 40.01, 0, 40, '°C'],
  ] as const)('refuses %s outside its range (%p, %p, %p)', (field, s, t, reference, min, max, unit) => {
    const given = { salinity: s, temperature: t, reference }[field];
    expect(gravity(s, t, reference)).toEqual({
      ok: false,
      problem: { code: 'outside-validity', field, given, min, max, unit, source: 'FofonoffMillard1983' },
    });
  });
});
