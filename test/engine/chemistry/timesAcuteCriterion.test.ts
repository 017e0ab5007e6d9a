import { copperCriteria, timesAcuteCriterion } from '../../../src/engine/chemistry/timesAcuteCriterion.js';
import { copperMgPerLitre } from '../../../src/engine/units/quantity.js';
import { saltWaterCopper } from '../published/CFR131.js';
import { eachRow, expectPrinted } from '../published/publishedTable.js';

describe('timesAcuteCriterion', () => {
  it('matches the criteria of CFR131 and the ratio derived from them', () => {
    eachRow(saltWaterCopper, ([, , level = 0], [acute = '', chronic = '', , times = '']) => {
      expectPrinted(1000 * copperCriteria.saltWaterAcute, acute);
      expectPrinted(1000 * copperCriteria.saltWaterChronic, chronic);
      expectPrinted(timesAcuteCriterion(copperMgPerLitre(level)), times);
    });
  });
});
