/** Enough for the largest chance below 1 that a number can be; ten do for 95 %. */
const mostRounds = 200;

/**
 * The z below which a standard normal is with a given chance.
 *
 * Φ(z) = 1/2 + φ(z)·(z + z³ ÷ 3 + z⁵ ÷ (3·5) + z⁷ ÷ (3·5·7) + …), solved for z by Newton's method from 0.
 *
 * Validity: chance above 0 and below 1.
 * Definition: the inverse of the standard normal's distribution function. All terms of the series have one sign, and Φ
 * bends one way on either side of 0, so that each round comes nearer without passing the answer.
 *
 * @param chance above 0 and below 1 [1]
 * @returns standard deviations from the mean [1]
 * @example normalQuantile(0.95) // ≈ 1.644854
 */
export function normalQuantile(chance: number): number {
  const upper = Math.max(chance, 1 - chance);
  let z = 0;
  for (let round = 0; round < mostRounds; round++) {
    const density = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
    const short = upper - 0.5 - density * seriesAt(z);
    if (short <= 0) break;
    z += short / density;
  }
  return chance < 0.5 ? -z : z;
}

function seriesAt(z: number): number {
  let term = z;
  let sum = z;
  for (let odd = 3; term > sum * 1e-17; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return sum;
}
