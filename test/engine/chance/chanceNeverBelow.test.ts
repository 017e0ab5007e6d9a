import { chanceNeverBelow } from '../../../src/engine/chance/chanceNeverBelow.js';
import type { TestedLevels } from '../../../src/engine/chance/levelEstimates.js';
import { normalBelow } from './normalBelow.js';
import { chanceByEvenGrid, chanceBySampling, chanceOfTwo } from './oracles.js';
import { RandomNumbers } from './randomNumbers.js';

const low = 1.95;

/** A hold tested at these days and levels by a meter good to ± 0.1 mg/L. */
function tested(given: Partial<TestedLevels> & Pick<TestedLevels, 'level'>): TestedLevels {
  const count = given.level.length;
  return {
    when: Array.from({ length: count }, (_, day) => day),
    spread: Array.from({ length: count }, () => 0.1 / 1.96),
    low,
    drift: 0.0195,
    ...given,
  };
}

describe('chanceNeverBelow', () => {
  describe('one reading', () => {
    it.each([-0.3, -0.1, 0, 0.01, 0.05, 0.1, 0.2, 1])(
      'is the normal tail for a reading %p above the limit',
      (above) => {
        const chance = chanceNeverBelow(tested({ level: [low + above] }));
        expect(chance).toBeCloseTo(normalBelow(above / (0.1 / 1.96)), 8);
      },
    );

    it('is one half for a reading at the limit, whatever the meter', () => {
      for (const spread of [1e-9, 0.001, 0.1, 5]) {
        expect(chanceNeverBelow(tested({ level: [low], spread: [spread] }))).toBeCloseTo(0.5, 8);
      }
    });
  });

  describe('two readings, in closed form', () => {
    const minute = 1 / 1440;
    it.each([
      { gap: 1, a: 0, b: 0, meter: [0.05, 0.05] },
      { gap: 1, a: 0.05, b: 0.02, meter: [0.05, 0.05] },
      { gap: 1, a: 0.1, b: 0.1, meter: [0.05, 0.02] },
      { gap: minute, a: 0, b: 0, meter: [0.05, 0.05] },
      { gap: minute, a: 0.03, b: 0.08, meter: [0.05, 0.05] },
      { gap: minute / 60, a: 0.01, b: 0.01, meter: [0.05, 0.05] },
      { gap: 40, a: 0.2, b: 0.05, meter: [0.05, 0.05] },
      { gap: 400, a: 0.3, b: 0.3, meter: [0.05, 0.05] },
      { gap: 1, a: 0.02, b: 0.02, meter: [0.001, 0.001] },
      { gap: 1, a: 0.3, b: 0, meter: [0.3, 0.01] },
      { gap: 30, a: 0.6, b: 0.01, meter: [0.02, 0.02] },
      { gap: 1, a: -0.02, b: 0.05, meter: [0.05, 0.05] },
    ])('$a then $b above, $gap days apart, spreads $meter', ({ gap, a, b, meter }) => {
      const two = tested({ when: [0, gap], level: [low + a, low + b], spread: meter });
      expect(Math.abs(chanceNeverBelow(two) - chanceOfTwo(two))).toBeLessThan(1e-4);
    });

    it('is the closed form over four decades of every scale', () => {
      const random = new RandomNumbers(11);
      for (let round = 0; round < 60; round++) {
        const scale = () => 10 ** random.between(-3, 1);
        const meter = [scale(), scale()];
        const two = {
          when: [0, scale()],
          level: [low + random.between(0, 3) * (meter[0] ?? 0), low + random.between(0, 3) * (meter[1] ?? 0)],
          spread: meter,
          low,
          drift: scale(),
        };
        expect(Math.abs(chanceNeverBelow(two) - chanceOfTwo(two))).toBeLessThan(1e-4);
      }
    });
  });

  describe('a level that cannot wander', () => {
    it('is the normal tail of the weighted mean', () => {
      const [level, spread] = [
        [2.0, 1.97, 1.96],
        [0.05, 0.03, 0.02],
      ];
      const weight = spread.map((s) => 1 / s ** 2);
      const sum = weight.reduce((total, w) => total + w, 0);
      const mean = level.reduce((total, r, k) => total + r * (weight[k] ?? NaN), 0) / sum;
      const expected = normalBelow((mean - low) * Math.sqrt(sum));
      for (const drift of [0, 1e-300, 1e-30, 1e-12, 1e-7]) {
        expect(chanceNeverBelow(tested({ level, spread, drift }))).toBeCloseTo(expected, 5);
      }
    });
  });

  it('agrees with brute force on an even grid', () => {
    const random = new RandomNumbers(7);
    for (let round = 0; round < 6; round++) {
      const count = 3 + Math.floor(random.uniform() * 5);
      let day = 46000;
      const when = Array.from({ length: count }, () => (day += random.between(0.4, 3)));
      const level = when.map(() => low + random.between(0, 0.15));
      const spread = when.map(() => random.between(0.02, 0.06));
      const hold = tested({ when, level, spread, drift: random.between(0.015, 0.05) });
      expect(Math.abs(chanceNeverBelow(hold) - chanceByEvenGrid(hold, 300))).toBeLessThan(0.001);
    }
  });

  it('agrees with levels drawn at random', () => {
    const random = new RandomNumbers(3);
    for (let round = 0; round < 6; round++) {
      const count = 5 + Math.floor(random.uniform() * 40);
      let day = 46000;
      const when = Array.from({ length: count }, () => (day += 10 ** random.between(-3, 0.7)));
      const level = when.map(() => low + random.between(0.02, 0.35));
      const spread = when.map(() => 10 ** random.between(-2, -1));
      const hold = tested({ when, level, spread, drift: 10 ** random.between(-2.5, -1.2) });
      const { chance, error } = chanceBySampling(hold, 20000, random);
      expect(Math.abs(chanceNeverBelow(hold) - chance)).toBeLessThan(4 * error + 1e-4);
    }
  });

  describe('what must not matter', () => {
    const random = new RandomNumbers(23);
    const holds = Array.from({ length: 25 }, () => {
      const count = 2 + Math.floor(random.uniform() * 30);
      let day = 46000;
      const when = Array.from({ length: count }, () => (day += 10 ** random.between(-4, 1)));
      const spread = when.map(() => 10 ** random.between(-4, -0.5));
      const level = when.map((_, k) => low + random.between(0.2, 4) * (spread[k] ?? NaN));
      return tested({ when, level, spread, drift: 10 ** random.between(-5, 0) });
    });

    it('reading the log backwards', () => {
      for (const hold of holds) {
        const backwards = {
          ...hold,
          when: [...hold.when].reverse().map((day) => 100000 - day),
          level: [...hold.level].reverse(),
          spread: [...hold.spread].reverse(),
        };
        expect(Math.abs(chanceNeverBelow(backwards) - chanceNeverBelow(hold))).toBeLessThan(1e-4);
      }
    });

    it('a test so coarse that it says nothing', () => {
      for (const hold of holds) {
        const more = {
          ...hold,
          when: [hold.when[0] ?? NaN],
          level: [hold.level[0] ?? NaN],
          spread: [hold.spread[0] ?? NaN],
        };
        for (let k = 1; k < hold.when.length; k++) {
          const [before, after] = [hold.when[k - 1] ?? NaN, hold.when[k] ?? NaN];
          more.when.push((before + after) / 2, after);
          more.level.push(low, hold.level[k] ?? NaN);
          more.spread.push(1e6, hold.spread[k] ?? NaN);
        }
        expect(Math.abs(chanceNeverBelow(more) - chanceNeverBelow(hold))).toBeLessThan(1e-4);
      }
    });

    it('the unit of levels and the unit of time', () => {
      for (const hold of holds) {
        const inMicrograms = {
          when: [...hold.when],
          level: [...hold.level].map((level) => level * 1000),
          spread: [...hold.spread].map((spread) => spread * 1000),
          low: hold.low * 1000,
          drift: hold.drift * 1000,
        };
        expect(chanceNeverBelow(inMicrograms)).toBeCloseTo(chanceNeverBelow(hold), 6);
        const inHours = { ...hold, when: [...hold.when].map((day) => day * 24), drift: hold.drift / Math.sqrt(24) };
        expect(chanceNeverBelow(inHours)).toBeCloseTo(chanceNeverBelow(hold), 6);
      }
    });

    it('the fineness of the grid: doubling it changes less than 0.0005', () => {
      for (const hold of holds) expect(Math.abs(chanceNeverBelow(hold, 2) - chanceNeverBelow(hold))).toBeLessThan(1e-4);
    });
  });

  describe('what must matter', () => {
    it('a lower reading lowers it', () => {
      const of = (level: number) => chanceNeverBelow(tested({ level: [2.1, 2.1, level, 2.1, 2.1] }));
      const chances = [2.2, 2.1, 2.05, 2.0, 1.97, 1.95].map(of);
      expect([...chances].sort((a, b) => b - a)).toEqual(chances);
      expect(chances[0]).toBeGreaterThan(chances[5] ?? NaN);
    });

    it('a longer untested stretch costs chance and does not cut', () => {
      const of = (gap: number) =>
        chanceNeverBelow(tested({ when: [0, 1, 1 + gap, 2 + gap], level: [2.1, 2.1, 2.1, 2.1] }));
      const chances = [1, 3, 10, 30, 100, 1000].map(of);
      expect([...chances].sort((a, b) => b - a)).toEqual(chances);
      expect(chances[0]).toBeGreaterThan(0.99);
      expect(chances[5]).toBeLessThan(0.3);
      expect(chances[5]).toBeGreaterThan(0);
    });

    it('readings far above the limit leave no doubt', () => {
      expect(chanceNeverBelow(tested({ level: Array.from({ length: 60 }, () => 2.5) }))).toBeGreaterThan(0.999999);
    });

    it('thirty readings at the limit leave no hope', () => {
      expect(chanceNeverBelow(tested({ level: Array.from({ length: 30 }, () => low) }))).toBeLessThan(0.05);
    });
  });

  it('stays from 0 to 1 over a sweep of every scale', () => {
    const random = new RandomNumbers(5);
    for (let round = 0; round < 300; round++) {
      const count = 1 + Math.floor(random.uniform() ** 3 * 60);
      let day = 1;
      const when = Array.from({ length: count }, () => (day += 10 ** random.between(-5, 3)));
      const spread = when.map(() => 10 ** random.between(-12, 2));
      const level = when.map((_, k) => low + random.between(-1, 5) * Math.min(4, spread[k] ?? NaN));
      const chance = chanceNeverBelow({ when, level, spread, low, drift: 10 ** random.between(-15, 4) });
      expect(chance).toBeGreaterThanOrEqual(0);
      expect(chance).toBeLessThanOrEqual(1);
    }
  });

  it('takes thousands of readings', () => {
    const random = new RandomNumbers(17);
    const level = Array.from({ length: 3000 }, () => 2.25 + 0.05 * random.normal());
    const chance = chanceNeverBelow(tested({ when: level.map((_, k) => k / 24), level }));
    expect(chance).toBeGreaterThan(0.9);
  });
});
