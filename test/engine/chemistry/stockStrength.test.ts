import * as fc from 'fast-check';
import { stockGrams } from '../../../src/engine/chemistry/stockGrams.js';
import { stockStrength } from '../../../src/engine/chemistry/stockStrength.js';
import { copperMgPerMl, litres, saltGrams } from '../../../src/engine/units/quantity.js';
import { roundStock, roundStockDerived } from '../published/FishHealthPage.js';
import { citratedStock } from '../published/HawaiiExtension.js';
import { eachRow, expectPrinted, halfUnit } from '../published/publishedTable.js';

const pentahydrate = (grams: number, volume: number) =>
  stockStrength({ grams: saltGrams(grams), volume: litres(volume), salt: 'pentahydrate' });

describe('stockStrength', () => {
  it('matches the citrated stock of HawaiiExtension', () => {
    eachRow(citratedStock, ([grams = 0, volume = 0], [, , strength = '']) => {
      expectPrinted(pentahydrate(grams, volume), strength);
    });
  });

  it('matches the stock that FishHealthPage prints to one figure', () => {
    eachRow(roundStock, ([grams = 0, volume = 0], [, , strength = '']) => {
      expectPrinted(pentahydrate(grams, volume), strength);
    });
    expectPrinted(pentahydrate(1, 0.25), roundStockDerived);
  });

  it('takes the anhydrous salt as stronger', () => {
    // 10 g × 0.398153 ÷ 1 L = 3.98153 mg/mL
    expectPrinted(stockStrength({ grams: saltGrams(10), volume: litres(1), salt: 'anhydrous' }), '3.98153');
  });
});

describe('stockGrams', () => {
  it('is 3 g for the citrated stock', () => {
    const grams = stockGrams({ strength: copperMgPerMl(1.01805), volume: litres(0.75), salt: 'pentahydrate' });
    expect(Math.abs(grams - 3)).toBeLessThan(3 * halfUnit('1.01805'));
  });

  it('is the inverse of stockStrength', () => {
    const size = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.constantFrom('pentahydrate', 'anhydrous'), (grams, volume, salt) => {
        const strength = stockStrength({ grams: saltGrams(grams), volume: litres(volume), salt });
        const back = stockGrams({ strength, volume: litres(volume), salt });
        expect(Math.abs(back - grams)).toBeLessThanOrEqual(1e-12 * grams);
      }),
    );
  });
});
