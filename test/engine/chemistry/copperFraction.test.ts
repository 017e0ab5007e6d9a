import { copperFraction } from '../../../src/engine/chemistry/copperFraction.js';
import { molarMass, saltNames, type SaltName } from '../../../src/engine/chemistry/molarMass.js';
import { copperSaltCheck } from '../published/CopperSalts.js';
import { eachRow, expectPrinted } from '../published/publishedTable.js';

/** The source lists the salts by their waters of crystal. */
const waterOf: Readonly<Record<SaltName, number>> = { pentahydrate: 5, anhydrous: 0 };

describe('copperFraction', () => {
  it('matches the derived molar masses and fractions of both salts', () => {
    eachRow(copperSaltCheck, ([waters], [, mass = '', part = '']) => {
      const salt = saltNames.find((name) => waterOf[name] === waters);
      expect(salt).toBeDefined();
      expectPrinted(molarMass(salt!), mass);
      expectPrinted(copperFraction(salt!), part);
    });
    expect(copperSaltCheck.rows).toHaveLength(saltNames.length);
  });

  it('lies within the span of the published weight sets', () => {
    expect(copperFraction('pentahydrate')).toBeGreaterThanOrEqual(0.254495);
    expect(copperFraction('pentahydrate')).toBeLessThanOrEqual(0.254515);
  });
});
