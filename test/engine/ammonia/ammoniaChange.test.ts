import * as fc from 'fast-check';
import { ammoniaChange } from '../../../src/engine/ammonia/ammoniaChange.js';
import { ammoniaMgPerLitre, copperMgPerLitre, copperMgPerMl, litres } from '../../../src/engine/units/quantity.js';

const change = (volume: number, ammonia: number, wanted: number, level: number, strength: number) =>
  ammoniaChange({
    volume: litres(volume),
    ammonia: ammoniaMgPerLitre(ammonia),
    wanted: ammoniaMgPerLitre(wanted),
    level: copperMgPerLitre(level),
    strength: copperMgPerMl(strength),
  });

describe('ammoniaChange', () => {
  it('dilutes 1 mg/L to 0.25 in 200 L by a change of 150 L at the tank level', () => {
    // 200 L × (1 − 0.25 ÷ 1) = 150 L; 150 L × 2.25 mg/L ÷ 10 mg/mL = 33.75 mL
    expect(change(200, 1, 0.25, 2.25, 10)).toEqual({ ok: true, value: { change: 150, copper: 33.75 } });
  });

  it('changes nothing where the ammonia is already as wanted', () => {
    expect(change(200, 0.5, 0.5, 2.25, 10)).toEqual({ ok: true, value: { change: 0, copper: 0 } });
  });

  it('takes no copper where the tank has none', () => {
    expect(change(200, 1, 0.5, 0, 10)).toEqual({ ok: true, value: { change: 100, copper: 0 } });
  });

  it('refuses more ammonia than there is', () => {
    expect(change(200, 0.5, 0.75, 2.25, 10)).toEqual({
      ok: false,
      problem: { code: 'more-than', field: 'wanted', given: '0.75', limitField: 'ammonia', limit: '0.5', unit: 'mg/L' },
    });
  });

  it('refuses to reach zero: only the whole volume would', () => {
    expect(change(200, 0.5, 0, 2.25, 10)).toEqual({
      ok: false,
      problem: { code: 'out-of-limits', at: { field: 'wanted' }, given: '0', limits: { above: 0 }, unit: 'mg/L' },
    });
  });

  it('applied, lands on the wanted ammonia and leaves the copper as it was', () => {
    const positive = (max: number) => fc.double({ min: 0.01, max, noNaN: true });
    fc.assert(
      fc.property(
        positive(5000),
        positive(10),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        positive(20),
        positive(200),
        (volume, ammonia, part, level, strength) => {
          const wanted = ammonia * part;
          const result = change(volume, ammonia, wanted, level, strength);
          if (!result.ok) return false;
          const kept = volume - result.value.change;
          const ammoniaAfter = (kept * ammonia) / volume;
          const levelAfter = (kept * level + result.value.copper * strength) / volume;
          return Math.abs(ammoniaAfter - wanted) < 1e-9 * ammonia && Math.abs(levelAfter - level) < 1e-9 * level;
        },
      ),
    );
  });
});
