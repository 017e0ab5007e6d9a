import { chanceNeverBelow } from '../../../src/engine/chance/chanceNeverBelow.js';
import { RandomNumbers } from './randomNumbers.js';

// Taken once: under the test runner every look at a global is slow.
const { floor, min, sqrt } = Math;

const low = 1.95;
const spread = 0.05;
const drift = 0.03;

/**
 * Whether a true level on its way between two known ones goes below the limit: the middle of the way is drawn again and
 * again, wherever the limit is near enough to be met, down to a tenth of a second.
 */
function goesBelow(from: number, to: number, days: number, random: RandomNumbers): boolean {
  if (from < low || to < low) return true;
  const wandered = drift * sqrt(days);
  if (days < 1e-6 || min(from, to) - low > 4 * wandered) return false;
  const middle = (from + to) / 2 + (wandered / 2) * random.normal();
  return goesBelow(from, middle, days / 2, random) || goesBelow(middle, to, days / 2, random);
}

/**
 * A tank of a true level anywhere around the limit, tested some times: its readings, and whether the true level never
 * was below. Null where a reading is below, so that there is no hold to tell of, and where none is near the limit, so
 * that there is nothing to doubt: to choose by the readings alone leaves the chance as it is.
 */
function tank(random: RandomNumbers): { when: number[]; level: number[]; held: boolean } | null {
  let truth = low + random.between(-4, 6) * spread;
  let held = truth >= low;
  const when = [0];
  const level = [truth + spread * random.normal()];
  const tests = 1 + floor(8 * random.uniform());
  for (let test = 1; test < tests && (level.at(-1) ?? 0) >= low; test++) {
    const gap = 10 ** random.between(-1, 1.3);
    const next = truth + drift * sqrt(gap) * random.normal();
    held = held && !goesBelow(truth, next, gap, random);
    truth = next;
    when.push((when.at(-1) ?? NaN) + gap);
    level.push(truth + spread * random.normal());
  }
  const lowest = min(...level);
  return lowest >= low && lowest < low + spread ? { when, level, held } : null;
}

describe('the chance that is told', () => {
  it('is the share of tanks that really held, in each tenth of it', () => {
    const random = new RandomNumbers(2026);
    const tenths = Array.from({ length: 10 }, () => ({ tanks: 0, told: 0, held: 0 }));
    for (let tanks = 0; tanks < 8000;) {
      const drawn = tank(random);
      if (drawn === null) continue;
      tanks++;
      const told = chanceNeverBelow({ ...drawn, spread: drawn.level.map(() => spread), low, drift });
      const tenth = tenths[min(9, floor(told * 10))]!;
      tenth.tanks++;
      tenth.told += told;
      tenth.held += drawn.held ? 1 : 0;
    }
    for (const { tanks, told, held } of tenths) {
      expect(tanks).toBeGreaterThan(80);
      const chance = told / tanks;
      expect(Math.abs(held / tanks - chance)).toBeLessThan(3.5 * sqrt((chance * (1 - chance)) / tanks));
    }
  });
});
