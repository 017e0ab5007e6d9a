import * as fc from 'fast-check';
import { copperInSalt } from '../../../src/engine/chemistry/copperInSalt.js';
import { copperMass } from '../../../src/engine/chemistry/copperMass.js';
import { saltForCopper } from '../../../src/engine/chemistry/saltForCopper.js';
import { copperMgPerLitre, copperMilligrams, litres, saltGrams } from '../../../src/engine/units/quantity.js';
import { anhydrousDosePrinted, copperDoseCheck, unsaidHydrateCheck } from '../published/CopperSalts.js';
import { copperForTank } from '../published/FishHealthPage.js';
import { eachRow, expectPrinted } from '../published/publishedTable.js';

describe('copperMass', () => {
  it('matches the worked doses', () => {
    eachRow(copperDoseCheck, ([volume = 0, level = 0], [, , copper = '']) => {
      expectPrinted(copperMass(litres(volume), copperMgPerLitre(level)), copper);
    });
  });

  it('is 30 mg where the fish-health page prints 30 grams', () => {
    eachRow(copperForTank, ([volume = 0, level = 0], [, , copper = '']) => {
      expectPrinted(copperMass(litres(volume), copperMgPerLitre(level)), copper);
    });
    expect(copperForTank.misprints[0]?.shouldBe).toBe('30 mg');
  });
});

describe('saltForCopper', () => {
  it('matches the worked doses of pentahydrate', () => {
    eachRow(copperDoseCheck, ([volume = 0, level = 0], [, , , salt = '']) => {
      const copper = copperMass(litres(volume), copperMgPerLitre(level));
      expectPrinted(1000 * saltForCopper(copper, 'pentahydrate'), salt);
    });
  });

  it('matches the worked dose of anhydrous salt', () => {
    expectPrinted(1000 * saltForCopper(copperMilligrams(20), 'anhydrous'), anhydrousDosePrinted);
  });

  it('is the inverse of copperInSalt', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (grams) => {
        for (const salt of ['pentahydrate', 'anhydrous'] as const) {
          const back = saltForCopper(copperInSalt(saltGrams(grams), salt), salt);
          expect(Math.abs(back - grams)).toBeLessThanOrEqual(1e-12 * grams);
        }
      }),
    );
  });
});

describe('copperInSalt', () => {
  it('gives both readings of a dose whose hydrate is unsaid', () => {
    eachRow(unsaidHydrateCheck, ([salt = 0], [, anhydrous = '', pentahydrate = '']) => {
      expectPrinted(copperInSalt(saltGrams(salt / 1000), 'anhydrous'), anhydrous);
      expectPrinted(copperInSalt(saltGrams(salt / 1000), 'pentahydrate'), pentahydrate);
    });
  });
});
