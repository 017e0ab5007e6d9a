import { wandering, wanderingSlope } from '../../../src/engine/level/wandering.js';

/** Simpson's rule over e^(−2ku), from 0 to t, and over its derivative. */
function simpson(f: (u: number) => number, to: number): number {
  const strips = 2000;
  let sum = f(0) + f(to);
  for (let strip = 1; strip < strips; strip++) sum += f((strip * to) / strips) * (strip % 2 === 1 ? 4 : 2);
  return (sum * to) / (3 * strips);
}

const cases: [number, number][] = [0, 1e-9, 0.001, 0.0166, 0.0167, 0.05, 0.5].flatMap((rate) =>
  [1e-6, 0.3, 3, 40].map((elapsed): [number, number] => [rate, elapsed]),
);

describe('wandering', () => {
  it.each(cases)('is the integral of e^(−2ku) for k = %d over %d days', (rate, elapsed) => {
    const integral = simpson((u) => Math.exp(-2 * rate * u), elapsed);
    expect(Math.abs(wandering(rate, elapsed) / integral - 1)).toBeLessThan(1e-9);
  });

  it('joins its series and its exponential without a step', () => {
    expect(wandering(0.05 + 1e-15, 1) / wandering(0.05 - 1e-15, 1)).toBeCloseTo(1, 12);
    expect(wanderingSlope(0.05 + 1e-15, 1) / wanderingSlope(0.05 - 1e-15, 1)).toBeCloseTo(1, 12);
  });
});

describe('wanderingSlope', () => {
  it.each(cases)('is the integral of −2u·e^(−2ku) for k = %d over %d days', (rate, elapsed) => {
    const integral = simpson((u) => -2 * u * Math.exp(-2 * rate * u), elapsed);
    expect(Math.abs(wanderingSlope(rate, elapsed) / integral - 1)).toBeLessThan(1e-8);
  });
});
