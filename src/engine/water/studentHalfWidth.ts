/**
 * Half the width of a two-sided interval of Student's t, in standard deviations.
 *
 * The t at which A(t | ν), the chance that |T| is below t, equals the coverage; with θ = arctan(t ÷ √ν)
 * ν even: A = sin θ·(1 + ½cos²θ + (1·3 ÷ 2·4)cos⁴θ + … to cos^(ν−2))
 * ν odd: A = (2 ÷ π)·(θ + sin θ·(cos θ + ⅔cos³θ + (2·4 ÷ 3·5)cos⁵θ + … to cos^(ν−2)))
 *
 * Basis: both series are finite and exact; θ is found by halving 0 to π ÷ 2.
 * Validity: coverage above 0 and below 1, ν a whole number from 1.
 * Differs from the source: nothing.
 * Source: [AbramowitzStegun1964, 26.7.3 and 26.7.4].
 *
 * @param coverage of the interval, from 0 to 1
 * @param freedom degrees of freedom
 * @returns standard deviations [1]
 * @example studentHalfWidth(0.95, 34) // ≈ 2.0322445
 */
export function studentHalfWidth(coverage: number, freedom: number): number {
  let [low, high] = [0, Math.PI / 2];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (chanceWithin(middle, freedom) < coverage) low = middle;
    else high = middle;
  }
  return Math.tan((low + high) / 2) * Math.sqrt(freedom);
}

function chanceWithin(angle: number, freedom: number): number {
  const cosine = Math.cos(angle);
  const isOdd = freedom % 2 === 1;
  let term = isOdd ? cosine : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let power = isOdd ? 3 : 2; power <= freedom - 2; power += 2) {
    term *= ((power - 1) / power) * cosine * cosine;
    sum += term;
  }
  return isOdd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
}
