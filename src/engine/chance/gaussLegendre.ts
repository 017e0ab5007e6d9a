/** Points and weights that integrate over −1 to 1. */
interface Quadrature {
  readonly points: Float64Array;
  readonly weights: Float64Array;
}

/**
 * Gauss-Legendre quadrature.
 *
 * points = the zeros of P_n, weights = 2 ÷ ((1 − x²)·P_n'(x)²)
 *
 * Definition: exact for polynomials up to degree 2n − 1; zeros by Newton's method from cos(π·(i + 3/4) ÷ (n + 1/2)).
 *
 * @param count how many points [1]
 * @returns points in rising order, and their weights
 * @example gaussLegendre(2).points[1] // ≈ 0.5773502692
 */
export function gaussLegendre(count: number): Quadrature {
  const points = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let index = 0; index < count; index++) {
    let x = -Math.cos((Math.PI * (index + 0.75)) / (count + 0.5));
    let slope = NaN;
    for (let round = 0; round < 10; round++) {
      const [value, previous] = legendre(count, x);
      slope = (count * (x * value - previous)) / (x * x - 1);
      x -= value / slope;
    }
    points[index] = x;
    weights[index] = 2 / ((1 - x * x) * slope * slope);
  }
  return { points, weights };
}

/** P_n and P_(n−1) at x. */
function legendre(degree: number, x: number): [number, number] {
  let previous = 1;
  let value = x;
  for (let n = 2; n <= degree; n++) {
    [previous, value] = [value, ((2 * n - 1) * x * value - (n - 1) * previous) / n];
  }
  return [value, previous];
}
