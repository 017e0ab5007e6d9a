import { wandering } from './wandering.js';

/** Below this the difference of two nearly equal terms loses too many digits, and a series keeps them. */
const small = 1e-3;

/**
 * How `wandering` changes with the rate.
 *
 * dq/dk = (t·e^(−2kt) − q) ÷ k; without loss −t²
 *
 * Definition: the derivative of q.
 *
 * @param rate k, at least 0 [1/day]
 * @param elapsed t [days]
 * @returns [day²]
 * @example wanderingSlope(0.5, 1) // ≈ -0.5285
 */
export function wanderingSlope(rate: number, elapsed: number): number {
  const x = rate * elapsed;
  if (x < small) return -elapsed * elapsed * (1 - x * (4 / 3 - x * (1 - (8 / 15) * x)));
  return (elapsed * Math.exp(-2 * x) - wandering(rate, elapsed)) / rate;
}
