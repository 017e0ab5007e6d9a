import { formNames } from '../../../src/engine/dose/forms.js';
import { pacePlan, type Pace } from '../../../src/engine/dose/pacePlan.js';
import { ramp } from '../../../src/engine/dose/ramp.js';
import { decidingDose } from '../../../src/engine/plan/decidingDose.js';
import { copperMgPerLitre, copperMgPerMl, litres, millilitres, serialDay } from '../../../src/engine/units/quantity.js';

const start = serialDay(46082);

describe('decidingDose', () => {
  it.each<[Pace, number, number]>([
    ['gradual', 72, 1.8], // dose 16 of 20, the first of the fourth day
    ['sensitive', 126, 1.8], // dose 28 of 35, the third of the sixth day
    ['urgent', 18, 2.25], // dose 4 of 4, as the third reaches only 75 %
    [1, 9, 1.8], // dose 4 of 5
    [2, 30, 1.8], // dose 8 of 10
    [3, 51, 1.8], // dose 12 of 15, the second of the third day
  ])('of a %s raise comes %d h after the first one and reaches %d mg/L', (pace, hours, level) => {
    const { at, levelAfter } = decidingDose({ start, form: 'chelated', pace });
    expect((at - start) * 24).toBeCloseTo(hours, 6);
    expect(levelAfter).toBeCloseTo(level, 9);
  });

  it('is the one that a raise of a real tank has, for every form and pace', () => {
    for (const form of formNames) {
      for (const pace of ['gradual', 'sensitive', 'urgent', 1, 2, 3, 5, 10, 60] as const) {
        const wanted = copperMgPerLitre({ sulfate: 0.2, amine: 0.5, chelated: 2.25 }[form]);
        const { days, dosesADay } = pacePlan(pace);
        const steps = ramp({
          volume: litres(200 * days * dosesADay),
          strength: copperMgPerMl(1),
          level: copperMgPerLitre(0),
          smallest: millilitres(0.1),
          wanted,
          start,
          pace,
        });
        const real = steps.ok ? steps.value.find(({ levelAfter }) => levelAfter >= 0.8 * wanted - 1e-9) : undefined;
        const { at, levelAfter } = decidingDose({ start, form, pace });
        expect([form, pace, at]).toEqual([form, pace, real?.at]);
        expect(levelAfter).toBeCloseTo(real?.levelAfter ?? NaN, 9);
      }
    }
  });
});
