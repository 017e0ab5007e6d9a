import type { SimulatedTreatment } from '../../../src/engine/level/simulatedTreatment.js';
import {
  copperMgPerLitre,
  copperMgPerMl,
  copperPerRootDay,
  days,
  fraction,
} from '../../../src/engine/units/quantity.js';
import { modelledTank, rateOf, usualTreatment } from './tank.js';

const tanks = 150;
const unmatched = { everyDays: days(5), share: fraction(0.3), replacement: copperMgPerLitre(0) };
const sulfate = {
  form: 'sulfate' as const,
  strength: copperMgPerMl(1),
  meter: { accuracy: copperMgPerLitre(0.02), percent: fraction(0) },
  drift: copperPerRootDay(0.002),
  lossPerDay: fraction(0.08),
};
const settings: [string, Partial<SimulatedTreatment>][] = [
  ['as usual', {}],
  ['without loss', { lossPerDay: fraction(0) }],
  ['with a loss of 5 % a day', { lossPerDay: fraction(0.05) }],
  ['with little drift', { drift: copperPerRootDay(0.003) }],
  ['with much drift', { drift: copperPerRootDay(0.1) }],
  ['with unmatched changes', { change: unmatched }],
  ['with free copper', sulfate],
  ['over ten days', { days: days(10) }],
];

describe('levelModel on simulated tanks', () => {
  it.each(settings)('has the true level in its 95 % band 95 times in 100, give or take 1.5, %s', (_, different) => {
    let inside = 0;
    let all = 0;
    for (let seed = 1; seed <= tanks; seed++) {
      const { tank, model } = modelledTank({ ...different, seed });
      tank.trueLevel.forEach((level, at) => {
        all++;
        if (level >= model.low[at]! && level <= model.high[at]!) inside++;
      });
    }
    expect(all).toBeGreaterThan(tanks * 40);
    expect(inside / all).toBeGreaterThan(0.935);
    expect(inside / all).toBeLessThan(0.965);
  });

  it('has the true level above the band as often as below it', () => {
    let [above, below, all] = [0, 0, 0];
    for (let seed = 1; seed <= tanks; seed++) {
      const { tank, model } = modelledTank({ seed: seed + 1000 });
      tank.trueLevel.forEach((level, at) => {
        all++;
        if (level > model.high[at]!) above++;
        if (level < model.low[at]!) below++;
      });
    }
    expect(above / all).toBeGreaterThan(0.015);
    expect(above / all).toBeLessThan(0.035);
    expect(below / all).toBeGreaterThan(0.015);
    expect(below / all).toBeLessThan(0.035);
  });

  it('foretells readings with standard normal errors', () => {
    let [count, sum, squares, large] = [0, 0, 0, 0];
    for (let seed = 1; seed <= tanks; seed++) {
      for (const error of modelledTank({ seed, lossPerDay: fraction(0.02) }).model.innovation) {
        if (Number.isNaN(error)) continue;
        count++;
        sum += error;
        squares += error * error;
        if (Math.abs(error) > 1.96) large++;
      }
    }
    expect(count).toBeGreaterThan(tanks * 25);
    expect(Math.abs(sum / count)).toBeLessThan(0.05);
    expect(Math.abs(Math.sqrt(squares / count) - 1)).toBeLessThan(0.05);
    expect(Math.abs(large / count - 0.05)).toBeLessThan(0.015);
  });

  it('estimates the loss without leaning, as closely as it says', () => {
    const truth = rateOf(0.03);
    const errors = Array.from({ length: tanks }, (_, at) => {
      const { model } = modelledTank({ seed: at + 1, lossPerDay: fraction(0.03) });
      return (model.lossRate - truth) / model.lossRateSpread;
    });
    const mean = errors.reduce((sum, x) => sum + x, 0) / tanks;
    const spread = Math.sqrt(errors.reduce((sum, x) => sum + (x - mean) ** 2, 0) / tanks);
    // Of 150 standard normals the mean has a standard deviation of 0.08, theirs one of 0.06; a syringe's steps lean a little.
    expect(Math.abs(mean)).toBeLessThan(0.35);
    expect(spread).toBeGreaterThan(0.8);
    expect(spread).toBeLessThan(1.2);
  });

  it('fails where it is told a wrong meter: the test can tell', () => {
    const worse = { accuracy: copperMgPerLitre(0.15), percent: fraction(0.06) };
    let [inside, all] = [0, 0];
    for (let seed = 1; seed <= 40; seed++) {
      const { tank } = modelledTank({ seed, meter: worse });
      const { model } = modelledTank({ seed });
      const count = Math.min(tank.events.count, model.expected.length);
      for (let at = 0; at < count; at++) {
        all++;
        if (tank.trueLevel[at]! >= model.low[at]! && tank.trueLevel[at]! <= model.high[at]!) inside++;
      }
    }
    expect(usualTreatment.meter.accuracy).toBeLessThan(worse.accuracy);
    expect(inside / all).toBeLessThan(0.935);
  });
});
