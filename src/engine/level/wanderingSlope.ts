import { wandering } from './wandering.js';

/** Below this u = 2kt the difference of two nearly equal terms loses digits, and the series keeps them. */
const small = 0.1;

/**
 * How `wandering` changes with the rate.
 *
 * dq/dk = (t·e^(−2kt) − q) ÷ k = −2t²·(1/2! − 2u/3! + 3u²/4! − …), u = 2kt; without loss −t²
 *
 * Definition: the derivative of q.
 *
 * @param rate k, at least 0 [1/day]
 * @param elapsed t [days]
 * @returns [day²]
 * @example wanderingSlope(0.5, 1) // ≈ -0.5285
 */
export function wanderingSlope(rate: number, elapsed: number): number {
  const u = 2 * rate * elapsed;
  if (u >= small) return (elapsed * Math.exp(-u) - wandering(rate, elapsed)) / rate;
  const end = 1 / 144 - u * (1 / 840 - u * (1 / 5760 - u / 45360));
  return -2 * elapsed * elapsed * (1 / 2 - u * (1 / 3 - u * (1 / 8 - u * (1 / 30 - u * end))));
}
