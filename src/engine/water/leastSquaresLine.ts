/** A straight line through points, and how far the points lie from it. */
export interface LeastSquaresLine {
  readonly slope: number;
  readonly intercept: number;
  /** Standard deviation of the slope. */
  readonly slopeDeviation: number;
  readonly residualSquares: number;
  /** Sum of squares of y about its mean. */
  readonly totalSquares: number;
  /** Degrees of freedom left to the residuals. */
  readonly freedom: number;
}

/**
 * The straight line through points that leaves the least sum of squares.
 *
 * slope = Σ(x − x̄)(y − ȳ) ÷ Σ(x − x̄)²; intercept = ȳ − slope·x̄; slope deviation = √(residual squares ÷ freedom ÷ Σ(x − x̄)²)
 *
 * Basis: means first, then sums about them, so that times far from zero cost no digits.
 * Validity: three points or more, not all at one x; anything else is a fault of the caller and throws.
 * Definition: ordinary least squares with a constant; checked against [NistNorris].
 *
 * @param x of each point
 * @param y of each point
 * @returns the line and its spread
 * @example leastSquaresLine([0, 1, 2, 3], [5, 7, 9, 11]).slope // = 2
 */
export function leastSquaresLine(x: readonly number[], y: readonly number[]): LeastSquaresLine {
  if (x.length < 3 || x.length !== y.length) throw new RangeError('a line needs three points of an x and a y');
  const [meanX, meanY] = [mean(x), mean(y)];
  let [squaresX, products, totalSquares] = [0, 0, 0];
  x.forEach((xi, i) => {
    const [dx, dy] = [xi - meanX, (y[i] ?? NaN) - meanY];
    squaresX += dx * dx;
    products += dx * dy;
    totalSquares += dy * dy;
  });
  if (squaresX === 0) throw new RangeError('a line needs two different x');
  const slope = products / squaresX;
  const residualSquares = x.reduce((sum, xi, i) => sum + ((y[i] ?? NaN) - meanY - slope * (xi - meanX)) ** 2, 0);
  const freedom = x.length - 2;
  return {
    slope,
    intercept: meanY - slope * meanX,
    slopeDeviation: Math.sqrt(residualSquares / freedom / squaresX),
    residualSquares,
    totalSquares,
    freedom,
  };
}

/** The mean, counted from the first number: equal numbers have exactly themselves for a mean. */
function mean(numbers: readonly number[]): number {
  const first = numbers[0] ?? NaN;
  return first + numbers.reduce((sum, number) => sum + (number - first), 0) / numbers.length;
}
