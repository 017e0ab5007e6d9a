import { conditionIn } from '../../../src/engine/fish/conditionIn';
import { conditions } from '../../../src/engine/fish/conditions';
import { praziquantelBath, secondBath, treatments } from '../../../src/engine/fish/treatments';
import { treatmentsFor } from '../../../src/engine/fish/treatmentsFor';
import type { Treatment } from '../../../src/engine/fish/treatment';

const given = (text: string): readonly Treatment[] => {
  const found = conditionIn(text)('condition');
  if (!found.ok) throw new Error(found.problem.code);
  return treatmentsFor(found.value);
};
const remedies = (condition: string): readonly string[] => given(condition).map(({ give }) => give);

describe('treatmentsFor', () => {
  it('has advice on every condition, and leaves the last word to a veterinarian', () => {
    for (const { name } of conditions) {
      expect(given(name).length).toBeGreaterThanOrEqual(2);
      expect(given(name).at(-1)).toMatchObject({ give: 'veterinarian', copper: 'other' });
    }
    expect(treatments).toHaveLength(conditions.reduce((sum, { name }) => sum + given(name).length, 0));
  });

  it('gives each line a source', () => {
    for (const { sources } of treatments) expect(sources.length).toBeGreaterThan(0);
  });

  it('gives copper for white spot, velvet and Trichodina, and for no other that is known', () => {
    for (const { name, key } of conditions) {
      const treats = ['white-spot', 'velvet', 'trichodina', 'unknown'].includes(key);
      expect([name, remedies(name).includes('copper')]).toEqual([name, treats]);
    }
    expect(given('ich')[0]?.copper).toBe('stops-reinfection');
    expect(given('brooklynella')[0]?.copper).toBe('not-treated');
    expect(given('uronema')[0]?.copper).toBe('not-reached');
    expect(given('flukes')[0]?.copper).toBe('disputed');
  });

  it('never gives praziquantel together with copper but in an emergency', () => {
    const together = treatments.filter(({ give }) => give === 'praziquantel-with-copper');
    expect(together.map(({ when }) => when)).toEqual(together.map(() => 'emergency'));
    expect(together.map(({ condition }) => condition)).toEqual(['flukes', 'black-spot']);
  });

  it('repeats the praziquantel bath between hatching and laying', () => {
    // ThomasEtAl2016: 2 mg/L. BondadReantasoEtAl1995, 25 °C: eggs hatch at 5 to 6 days, young lay 10 to 11 days later.
    expect(praziquantelBath).toBe(2);
    expect(secondBath.from).toBeGreaterThan(6);
    expect(secondBath.to).toBeLessThanOrEqual(5 + 10);
    const again = treatments.filter(({ give }) => give === 'praziquantel-again');
    expect(again).toEqual([
      expect.objectContaining({ condition: 'flukes', sources: ['BondadReantasoEtAl1995'], derived: true }),
    ]);
  });
});
