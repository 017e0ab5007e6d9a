import type { TestedLevels } from '../../../src/engine/chance/levelEstimates.js';
import { normalBelow } from './normalBelow.js';
import type { RandomNumbers } from './randomNumbers.js';

// Taken once: under the test runner every look at a global is slow.
const { PI, exp, max, min, sqrt, ceil } = Math;

/**
 * Chance that two correlated normals are both above 0, by Simpson's rule over the first, x = top·t²: its points crowd at
 * 0, where the second's share changes within the little that two tests a moment apart can differ.
 */
export function bothAbove(
  mean: readonly [number, number],
  spread: readonly [number, number],
  correlation: number,
): number {
  const top = mean[0] + 9 * spread[0];
  if (top <= 0) return 0;
  const strips = 2000;
  const apart = spread[1] * sqrt(1 - correlation ** 2);
  let sum = 0;
  for (let strip = 0; strip <= strips; strip++) {
    const t = strip / strips;
    const z = (top * t * t - mean[0]) / spread[0];
    const weight = strip === 0 || strip === strips ? 1 : strip % 2 === 1 ? 4 : 2;
    const second = normalBelow((mean[1] + correlation * spread[1] * z) / apart);
    sum += weight * 2 * top * t * exp(-0.5 * z * z) * second;
  }
  return sum / strips / (3 * spread[0] * sqrt(2 * PI));
}

/**
 * Two readings in closed form, by the method of images. With u, v the true levels above the limit, the paths that touch
 * the limit have the density of those that start at −u, so
 * chance = P(u, v > 0 | a, b) − [N(a + b; 0, w²) ÷ N(a − b; 0, w²)]·P(u' < 0, v > 0 | −a, b), w² = α² + β² + s².
 */
export function chanceOfTwo(tested: TestedLevels): number {
  const [t1 = NaN, t2 = NaN] = tested.when;
  const [r1 = NaN, r2 = NaN] = tested.level;
  const [alpha = NaN, beta = NaN] = tested.spread;
  const variance = tested.drift ** 2 * (t2 - t1);
  const total = alpha ** 2 + beta ** 2 + variance;
  const spread = [alpha * sqrt((beta ** 2 + variance) / total), beta * sqrt((alpha ** 2 + variance) / total)] as const;
  const correlation = (alpha ** 2 * beta ** 2) / total / (spread[0] * spread[1]);
  // The mean of u given both is the mean of its own reading and the other's, each weighted by how little it may be off.
  const means = (a: number, b: number) =>
    [
      (a * (beta ** 2 + variance) + b * alpha ** 2) / total,
      (b * (alpha ** 2 + variance) + a * beta ** 2) / total,
    ] as const;
  const a = r1 - tested.low;
  const b = r2 - tested.low;
  const direct = bothAbove(means(a, b), spread, correlation);
  const [u, v] = means(-a, b);
  const image = bothAbove([-u, v], spread, -correlation);
  return direct - exp((-2 * a * b) / total) * image;
}

/**
 * Any number of readings by brute force: the true level on an even grid, the chance of each step between grid points
 * with and without touching the limit, nothing adapted to anything. Good only where the grid is finer than every step.
 */
export function chanceByEvenGrid({ when, level, spread, low, drift }: TestedLevels, points: number): number {
  const highest = max(...level) - low + 7 * max(...spread);
  const lowest = min(...level) - low - 7 * max(...spread);
  const width = (highest - lowest) / points;
  const at = Array.from({ length: points }, (_, index) => lowest + (index + 0.5) * width);
  let above: number[] = at.map((x) => (x > 0 ? 1 : 0));
  let all: number[] = at.map(() => 1);
  for (let reading = 0; reading < level.length; reading++) {
    if (reading > 0) {
      const variance = drift ** 2 * ((when[reading] ?? NaN) - (when[reading - 1] ?? NaN));
      const [before, free] = [above, all];
      const reach = ceil((9 * sqrt(variance)) / width);
      above = at.map((x, index) => (x <= 0 ? 0 : stepped(before, at, index, reach, (y) => images(x, y, variance))));
      all = at.map((x, index) => stepped(free, at, index, reach, (y) => exp(-((x - y) ** 2) / (2 * variance))));
    }
    const fit = at.map((x) => exp(-0.5 * ((x + low - (level[reading] ?? NaN)) / (spread[reading] ?? NaN)) ** 2));
    above = above.map((mass, index) => mass * (fit[index] ?? NaN));
    all = all.map((mass, index) => mass * (fit[index] ?? NaN));
    const scale = max(...all);
    above = above.map((mass) => mass / scale);
    all = all.map((mass) => mass / scale);
  }
  return sum(above) / sum(all);
}

function images(x: number, y: number, variance: number): number {
  return exp(-((x - y) ** 2) / (2 * variance)) - exp(-((x + y) ** 2) / (2 * variance));
}

function stepped(mass: number[], at: number[], index: number, reach: number, kernel: (y: number) => number): number {
  let total = 0;
  for (let from = max(0, index - reach); from <= min(at.length - 1, index + reach); from++) {
    total += (mass[from] ?? NaN) * kernel(at[from] ?? NaN);
  }
  return total;
}

function sum(numbers: number[]): number {
  return numbers.reduce((total, x) => total + x, 0);
}

/**
 * Any number of readings by chance itself: levels drawn from their joint normal given all readings, which is written
 * down whole (precision = readings + steps) and factored, and each path weighted with its bridges' chance not to touch.
 */
export function chanceBySampling(
  tested: TestedLevels,
  draws: number,
  random: RandomNumbers,
): { chance: number; error: number } {
  const { when, level, spread, low, drift } = tested;
  const count = level.length;
  const step = Array.from({ length: count - 1 }, (_, k) => drift ** 2 * ((when[k + 1] ?? NaN) - (when[k] ?? NaN)));
  const diagonal = Array.from({ length: count }, (_, k) => {
    return (
      1 / (spread[k] ?? NaN) ** 2 + (k > 0 ? 1 / (step[k - 1] ?? NaN) : 0) + (k < count - 1 ? 1 / (step[k] ?? NaN) : 0)
    );
  });
  // Factor of the precision: root on the diagonal, side below it.
  const root: number[] = [];
  const side: number[] = [];
  for (let k = 0; k < count; k++) {
    const before = k > 0 ? -1 / (step[k - 1] ?? NaN) / (root[k - 1] ?? NaN) : 0;
    side.push(before);
    root.push(sqrt((diagonal[k] ?? NaN) - before ** 2));
  }
  const half: number[] = [];
  for (let k = 0; k < count; k++) {
    const pull = ((level[k] ?? NaN) - low) / (spread[k] ?? NaN) ** 2;
    half.push((pull - (side[k] ?? NaN) * (half[k - 1] ?? 0)) / (root[k] ?? NaN));
  }
  let total = 0;
  let squares = 0;
  for (let draw = 0; draw < draws; draw++) {
    let next = 0;
    let held = 1;
    for (let k = count - 1; k >= 0 && held > 0; k--) {
      const pulled = k < count - 1 ? (side[k + 1] ?? NaN) * next : 0;
      const x = ((half[k] ?? NaN) + random.normal() - pulled) / (root[k] ?? NaN);
      held *= x <= 0 ? 0 : k < count - 1 ? 1 - exp((-2 * x * next) / (step[k] ?? NaN)) : 1;
      next = x;
    }
    total += held;
    squares += held * held;
  }
  const chance = total / draws;
  return { chance, error: sqrt(max(0, squares / draws - chance * chance) / draws) };
}
