import { swappedSystems } from '../../../src/engine/rules/swappedSystems.js';
import { unitSlip } from '../../../src/engine/rules/unitSlip.js';
import { chelatedCard, findingsBy, foundBy, raisedLog } from './raisedLog.js';
import { treatmentFrom } from './treatmentFrom.js';

const then = `
  2026-03-09 08:00 | 2.24 |
  2026-03-10 08:00 | 2.25 |
`;

describe('swappedSystems', () => {
  it.each([
    ['0.5', 'amine'],
    ['0.47', 'amine'],
    ['0.19', 'sulfate'],
  ])('finds %s among chelated readings', (written, fits) => {
    const log = `${raisedLog}  2026-03-08 08:00 | ${written} |${then}`;
    expect(foundBy(swappedSystems, log)).toEqual(['warning 9 swapped-systems']);
    expect(findingsBy(swappedSystems, log)[0]).toMatchObject({ fits });
  });

  it('is a danger once something was dosed on it', () => {
    const log = `${raisedLog}  2026-03-08 08:00 | 0.5 | 9\n  2026-03-09 08:00 | 2.7 |\n  2026-03-10 08:00 | 2.7 |`;
    expect(foundBy(swappedSystems, log)).toEqual(['danger 9 swapped-systems']);
  });

  it('finds none in a log without one, nor where the level stays there', () => {
    expect(foundBy(swappedSystems, raisedLog + then)).toEqual([]);
    const stays = '  2026-03-08 08:00 | 0.5 |\n  2026-03-09 08:00 | 0.5 |\n  2026-03-10 08:00 | 0.5 |';
    expect(foundBy(swappedSystems, raisedLog + stays)).toEqual([]);
  });

  it('finds none in a reading of no band', () => {
    expect(foundBy(swappedSystems, `${raisedLog}  2026-03-08 08:00 | 1.2 |${then}`)).toEqual([]);
  });

  it('leaves to a slip of the pen what one explains', () => {
    const treatment = treatmentFrom(`${raisedLog}  2026-03-08 08:00 | 0.22 |${then}`, chelatedCard);
    const named = new Set(unitSlip.find(treatment, new Set()).map(({ row }) => row ?? 0));
    expect([...named]).toEqual([9]);
    expect(swappedSystems.find(treatment, named)).toEqual([]);
  });
});
