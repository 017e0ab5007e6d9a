import { seededNumbers } from '../../../src/engine/level/seededNumbers.js';

const drawn = (seed: number, kind: 'uniform' | 'normal', count: number) => {
  const numbers = seededNumbers(seed);
  return Array.from({ length: count }, () => numbers[kind]());
};
const moment = (numbers: readonly number[], power: number) =>
  numbers.reduce((sum, x) => sum + x ** power, 0) / numbers.length;

describe('seededNumbers', () => {
  it('repeats itself for a seed', () => {
    expect(drawn(9, 'uniform', 50)).toEqual(drawn(9, 'uniform', 50));
    expect(drawn(9, 'uniform', 50)).not.toEqual(drawn(10, 'uniform', 50));
  });

  it('is even from 0 to 1', () => {
    const numbers = drawn(1, 'uniform', 100_000);
    expect(Math.min(...numbers)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...numbers)).toBeLessThan(1);
    const counts = new Array<number>(20).fill(0);
    numbers.forEach((x) => counts[Math.floor(20 * x)]!++);
    // Chi-square of 19 degrees of freedom: above 43.8 once in a thousand; from memory
    expect(counts.reduce((sum, n) => sum + (n - 5000) ** 2 / 5000, 0)).toBeLessThan(43.8);
  });

  it('has the moments of a standard normal, one draw after another unrelated', () => {
    const numbers = drawn(2, 'normal', 200_000);
    expect(Math.abs(moment(numbers, 1))).toBeLessThan(0.01);
    expect(Math.abs(moment(numbers, 2) - 1)).toBeLessThan(0.015);
    expect(Math.abs(moment(numbers, 3))).toBeLessThan(0.03);
    expect(Math.abs(moment(numbers, 4) - 3)).toBeLessThan(0.1);
    const products = numbers.slice(1).map((x, at) => x * numbers[at]!);
    expect(Math.abs(moment(products, 1))).toBeLessThan(0.01);
  });
});
