import { ammoniaFromNitrogen } from '../../../src/engine/ammonia/ammoniaFromNitrogen.js';
import { freeAmmonia, type AmmoniaBasis } from '../../../src/engine/ammonia/freeAmmonia.js';
import {
  ammoniaNitrogenMgPerLitre,
  celsius,
  phNbs,
  practicalSalinity,
  totalAmmoniaMgPerLitre,
} from '../../../src/engine/units/quantity.js';
import {
  unionisedPercent,
  unionisedPercentSalinity,
  unionisedPercentTemperatures,
} from '../published/BowerBidwell1978.js';
import { eachRow } from '../published/publishedTable.js';

const free = (total: number, pH: number, temperature: number, salinity: number, as: AmmoniaBasis = 'NH3') =>
  freeAmmonia({
    total: totalAmmoniaMgPerLitre(total),
    pH: phNbs(pH),
    temperature: celsius(temperature),
    salinity: practicalSalinity(salinity),
    as,
  });

describe('freeAmmonia', () => {
  it('lies within 2 % of every printed cell of BowerBidwell1978', () => {
    eachRow(unionisedPercent, ([pH = NaN, ...printed]) =>
      printed.forEach((cell, i) => {
        const result = free(100, pH, unionisedPercentTemperatures[i] ?? NaN, unionisedPercentSalinity);
        expect(result.ok && Math.abs(result.value / cell - 1)).toBeLessThan(0.02);
      }),
    );
  });

  it('is 0 where there is no ammonia', () => {
    expect(free(0, 8.2, 25, 35)).toEqual({ ok: true, value: 0 });
  });

  it('gives NH3 from nitrogen too', () => {
    const [asNitrogen, asAmmonia] = [free(1, 8.2, 25, 35, 'N'), free(17.031 / 14.007, 8.2, 25, 35, 'NH3')];
    if (!asNitrogen.ok || !asAmmonia.ok) throw new Error('refused');
    expect(asNitrogen.value).toBeCloseTo(asAmmonia.value, 12);
  });

  it('takes both ends of each range', () => {
    for (const pH of [7.5, 8.5])
      for (const t of [5, 35]) for (const s of [5, 35]) expect(free(1, pH, t, s).ok).toBe(true);
  });

  it.each([
    ['pH', 7.49, 25, 35, 7.5, 8.5, ''],
    ['pH', 8.51, 25, 35, 7.5, 8.5, ''],
    ['temperature', 8.2, 4.9, 35, 5, 35, '°C'],
    ['temperature', 8.2, 35.1, 35, 5, 35, '°C'],
    ['salinity', 8.2, 25, 4.9, 5, 35, 'g/kg'],
    ['salinity', 8.2, 25, 35.1, 5, 35, 'g/kg'],
  ] as const)('refuses %s outside its range (%p, %p, %p)', (field, pH, temperature, salinity, min, max, unit) => {
    const given = { pH, temperature, salinity }[field];
    expect(free(1, pH, temperature, salinity)).toEqual({
      ok: false,
      problem: { code: 'outside-validity', field, given, min, max, unit, source: 'BowerBidwell1978' },
    });
  });
});

describe('ammoniaFromNitrogen', () => {
  it('is 1.21589 mg NH3 for each mg N', () => {
    // (14.007 + 3 × 1.008) ÷ 14.007
    expect(ammoniaFromNitrogen(ammoniaNitrogenMgPerLitre(1))).toBeCloseTo(1.21589, 5);
  });
});
