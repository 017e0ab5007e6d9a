import { lossEstimate } from '../../../src/engine/level/lossEstimate.js';
import { lossScore } from '../../../src/engine/level/lossScore.js';
import { levelSteps } from '../../../src/engine/level/levelSteps.js';
import { copperMgPerLitre, copperPerRootDay, days, fraction } from '../../../src/engine/units/quantity.js';
import { eventsOf, type Line } from './eventsOf.js';
import { modelOf, usualTank } from './modelOf.js';
import { modelledTank, tankOf, usualTreatment } from './tank.js';

const stepsOf = (lines: readonly Line[]) => levelSteps({ ...usualTank, events: eventsOf(lines) });
const falling = (rate: number, count: number, every = 1): Line[] =>
  Array.from({ length: count }, (_, at) => [at * every, 'reading', 2 * Math.exp(-rate * at * every)]);

describe('lossScore', () => {
  it.each([
    [0, 0.02],
    [0.003, 0.02],
    [0.05, 0.1],
    [0.2, 0.001],
    [0.45, 0],
  ])('has the slope of its likelihood at k = %d, drift %d', (rate, drift) => {
    for (let seed = 1; seed <= 5; seed++) {
      const change = { everyDays: days(3), share: fraction(0.3), replacement: copperMgPerLitre(1) };
      const { events } = tankOf({ seed, change, days: days(15) });
      const steps = levelSteps({ ...usualTank, events });
      const h = 1e-6;
      const at = (k: number) => lossScore(steps, { rate: k, drift }).logLikelihood;
      // Forward from 0, where there is no rate below; second differences take out the curve.
      const numeric =
        rate === 0 ? (4 * at(h) - at(2 * h) - 3 * at(0)) / (2 * h) : (at(rate + h) - at(rate - h)) / (2 * h);
      const { slope, information } = lossScore(steps, { rate, drift });
      expect(Math.abs(slope - numeric)).toBeLessThan(1e-5 * (Math.abs(slope) + information * 1e-2));
    }
  });

  it('is not moved by when the log begins', () => {
    const lines: Line[] = [
      [10, 'reading', 2],
      [11, 'reading', 1.9],
      [14, 'reading', 1.7],
    ];
    const early: Line[] = [[0, 'dose', 5], [3, 'change', 20, 0.5], ...lines];
    const course = { rate: 0.03, drift: 0.02 };
    expect(lossScore(stepsOf(early), course)).toEqual(lossScore(stepsOf(lines), course));
  });
});

describe('lossEstimate', () => {
  it('finds the rate of readings that fall by it, with the spread of a regression', () => {
    const { rate, spread } = lossEstimate(stepsOf(falling(0.05, 31)), 0);
    expect(rate).toBeCloseTo(0.05, 4);
    // y = C·e^(−kt): with h = dy/dC and g = dy/dk the information on k is (Σg² − (Σgh)² ÷ Σh²) ÷ σ², and the prior's 1/0.1²
    const h = Array.from({ length: 31 }, (_, t) => Math.exp(-rate * t));
    const g = h.map((x, t) => -2 * t * x);
    const sum = (a: number[], b: number[]) => a.reduce((total, x, t) => total + x * b[t]!, 0);
    const information = (sum(g, g) - sum(g, h) ** 2 / sum(h, h)) / 0.05 ** 2 + 100;
    expect(spread * Math.sqrt(information)).toBeCloseTo(1, 3);
  });

  it('is where a search over the whole interval finds the most likely rate', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const drift = copperPerRootDay([0.001, 0.02, 0.1][seed % 3]!);
      const { events } = tankOf({
        seed,
        drift,
        days: days([3, 8, 34][(seed % 4) % 3]!),
        lossPerDay: fraction([0, 0.01, 0.1, 0.3][seed % 4]!),
      });
      // Every fifth log has doses of a wrong strength, every seventh a wild reading.
      events.kind.forEach((kind, at) => {
        if (seed % 5 === 0 && kind === 2) events.amount[at]! *= 0.7;
        if (seed % 7 === 0 && kind === 0 && at % 9 === 0)
          events.amount[at] = events.detail[at] = events.amount[at]! * 1.5;
      });
      const steps = levelSteps({ ...usualTank, events });
      const worth = (rate: number) => lossScore(steps, { rate, drift }).logLikelihood - (rate / 0.1) ** 2 / 2;
      const { rate, spread } = lossEstimate(steps, drift);
      const best = Math.max(...Array.from({ length: 501 }, (_, at) => worth(at / 1000)));
      expect(worth(rate)).toBeGreaterThan(best - 1e-6);
      if (rate > 0 && rate < 0.5) {
        expect(worth(rate)).toBeGreaterThanOrEqual(worth(rate + spread / 20));
        expect(worth(rate)).toBeGreaterThanOrEqual(worth(Math.max(0, rate - spread / 20)));
      }
    }
  });

  it('takes few passes', () => {
    for (let seed = 1; seed <= 30; seed++) {
      const { events } = tankOf({ seed, lossPerDay: fraction(seed / 100) });
      expect(lossEstimate(levelSteps({ ...usualTank, events }), 0.02).passes).toBeLessThanOrEqual(8);
    }
  });

  it('stays from 0 to 0.5', () => {
    const rising: Line[] = [
      [0, 'reading', 2],
      [1, 'reading', 2.2],
      [2, 'reading', 2.4],
    ];
    expect(lossEstimate(stepsOf(rising), 0).rate).toBe(0);
    expect(lossEstimate(stepsOf(falling(2, 20, 0.25)), 0).rate).toBe(0.5);
  });

  it('is 0 and no estimate under three readings that say something', () => {
    const none = { rate: 0, spread: 0, passes: 0 };
    expect(lossEstimate(stepsOf(falling(0.1, 2)), 0)).toEqual(none);
    expect(lossEstimate(stepsOf([...falling(0.1, 2), [3, 'reading', 5, Infinity]]), 0)).toEqual(none);
    expect(lossEstimate(stepsOf(falling(0.1, 3)), 0).rate).toBeGreaterThan(0);
  });

  it('leans to 0 where the log shows little, and by less than a fiftieth of its spread where it shows much', () => {
    // 0.15 mg/L in a quarter day, by a meter of ± 0.1, would be 30 % a day.
    const afternoon: Line[] = [
      [0, 'reading', 2],
      [0.1, 'reading', 1.95],
      [0.25, 'reading', 1.85],
    ];
    expect(lossEstimate(stepsOf(afternoon), 0.02).rate).toBeLessThan(0.12);
    const { model } = modelledTank({ lossPerDay: fraction(0.05) });
    const { slope, information } = lossScore(model.path.steps, { rate: model.lossRate, drift: usualTreatment.drift });
    // The step that the likelihood alone would still take
    expect(slope / information).toBeGreaterThan(0);
    expect(slope / information / model.lossRateSpread).toBeLessThan(1 / 50);
  });

  it('carries what is uncertain of it into the band after the last reading', () => {
    const lines: Line[] = [...falling(0.05, 8), [17, 'dose', 0]];
    const estimated = modelOf(lines);
    const given = modelOf(lines, { lossRate: estimated.lossRate });
    const width = ({ high, low }: typeof given) => high[8]! - low[8]!;
    // Ten days after the last reading the level changes by about −level·(10 + half the log) for each unit of k.
    const byRate = 2 * 1.96 * estimated.lossRateSpread * estimated.expected[8]! * (10 + 3.5);
    expect(Math.hypot(width(given), byRate) / width(estimated)).toBeGreaterThan(0.93);
    expect(Math.hypot(width(given), byRate) / width(estimated)).toBeLessThan(1.07);
    expect(width(estimated)).toBeGreaterThan(1.5 * width(given));
  });
});
