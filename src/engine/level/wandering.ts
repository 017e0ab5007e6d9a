/** Below this u = 2kt the series is exact to the last digits, and quicker than the exponential. */
const small = 0.1;

/**
 * Variance that a drift of 1 mg/L per √day gives to a level that is lost at a rate at the same time.
 *
 * q = (1 − e^(−2kt)) ÷ 2k = t·(1 − u/2! + u²/3! − …), u = 2kt; without loss t
 *
 * Basis: dC = −k·C dt + drift·dW, over t days, exactly.
 * Definition: the integral of e^(−2ku) from 0 to t.
 *
 * @param rate k, at least 0 [1/day]
 * @param elapsed t [days]
 * @returns [day]; times drift² it is a variance in (mg/L)²
 * @example wandering(0.5, 1) // ≈ 0.6321
 */
export function wandering(rate: number, elapsed: number): number {
  const u = 2 * rate * elapsed;
  if (u >= small) return -Math.expm1(-u) / (2 * rate);
  const end = 1 / 120 - u * (1 / 720 - u * (1 / 5040 - u / 40320));
  return elapsed * (1 - u * (1 / 2 - u * (1 / 6 - u * (1 / 24 - u * end))));
}
