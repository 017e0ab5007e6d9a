import { normalQuantile } from '../../../src/engine/chance/normalQuantile.js';
import { normalBelow } from './normalBelow.js';

describe('normalQuantile', () => {
  // From memory: the printed quantiles of every table.
  it.each([
    [0.5, 0],
    [0.9, 1.281552],
    [0.95, 1.644854],
    [0.975, 1.959964],
    [0.99, 2.326348],
    [0.999, 3.090232],
    [0.05, -1.644854],
    [0.0001, -3.719016],
  ])('of %p', (chance, z) => {
    expect(normalQuantile(chance)).toBeCloseTo(z, 6);
  });

  it('turns back what the integral of the density gives', () => {
    for (let z = -6; z <= 6; z += 0.25) expect(normalQuantile(normalBelow(z))).toBeCloseTo(z, 5);
  });

  it('comes to an end at the ends', () => {
    for (const tiny of [1e-15, 1e-12, 1e-9]) {
      expect(normalQuantile(1 - tiny)).toBeGreaterThan(5.9);
      expect(normalQuantile(1 - tiny)).toBeLessThan(8.3);
      expect(normalQuantile(tiny)).toBeLessThan(-5.9);
    }
  });
});
