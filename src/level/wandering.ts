/** Below this the difference of two nearly equal terms loses too many digits, and a series keeps them. */
const small = 1e-3;

/**
 * Variance that a drift of 1 mg/L per √day gives to a level that is lost at a rate at the same time.
 *
 * q = (1 − e^(−2kt)) ÷ 2k; without loss t
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
  const x = rate * elapsed;
  return x < small ? elapsed * (1 - x * (1 - x * (2 / 3 - x / 3))) : -Math.expm1(-2 * x) / (2 * rate);
}
