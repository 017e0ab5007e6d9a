import { formNames } from '../../../src/engine/dose/forms.js';
import { observationEnd } from '../../../src/engine/plan/observationEnd.js';
import { copperMgPerLitre, serialDay } from '../../../src/engine/units/quantity.js';

const ended = serialDay(46116.5);

describe('observationEnd', () => {
  it('is 14 and 28 days after the treatment, whatever the form', () => {
    for (const form of formNames)
      expect(observationEnd({ ended, form })).toEqual({ earliest: 46130.5, advised: 46144.5 });
  });

  it.each([
    [2.09, 46144.5],
    [2.0999999, 46144.5],
    [2.1, 46130.5],
    [2.1 - 1e-10, 46130.5],
    [2.25, 46130.5],
    [0, 46144.5],
  ])('after a chelated hold at %d mg/L may end at %d', (level, earliest) => {
    const end = observationEnd({ ended, level: copperMgPerLitre(level), form: 'chelated' });
    expect(end).toEqual({ earliest, advised: 46144.5 });
  });

  it('knows no low hold of another form', () => {
    const level = copperMgPerLitre(0.2);
    expect(observationEnd({ ended, level, form: 'sulfate' }).earliest).toBe(46130.5);
    expect(observationEnd({ ended, level, form: 'amine' }).earliest).toBe(46130.5);
  });
});
