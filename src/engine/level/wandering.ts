/**
 * Below this u = 2kt the series is exact to the last digits, quicker than the exponential, and keeps the digits that the
 * difference of two nearly equal terms would lose.
 */
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
