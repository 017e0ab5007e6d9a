import * as fc from 'fast-check';
import { copperMgPerLitre, copperMgPerMl, litres } from '../../../src/engine/units/quantity.js';
import { copperForChange } from '../../../src/engine/water/copperForChange.js';
import { levelAfterChange } from '../../../src/engine/water/levelAfterChange.js';

const copper = (change: number, level: number, strength: number) =>
  copperForChange({ change: litres(change), level: copperMgPerLitre(level), strength: copperMgPerMl(strength) });

describe('copperForChange', () => {
  it('is 11.25 mL of 10 mg/mL for 50 L at 2.25', () => {
    // 50 L × 2.25 mg/L ÷ 10 mg/mL = 11.25 mL
    expect(copper(50, 2.25, 10)).toBe(11.25);
  });

  it('is 0 at level 0', () => {
    expect(copper(50, 0, 10)).toBe(0);
  });

  it("brings the replacement water to the tank's level, so that the change leaves it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0.2, max: 100, noNaN: true }),
        (volume, share, level, strength) => {
          const change = volume * share;
          const replacement = (copper(change, level, strength) * strength) / change;
          const after = levelAfterChange({
            volume: litres(volume),
            level: copperMgPerLitre(level),
            change: litres(change),
            replacement: copperMgPerLitre(replacement),
          });
          return after.ok && Math.abs(after.value - level) <= 1e-12 * Math.max(1, level);
        },
      ),
    );
  });
});
