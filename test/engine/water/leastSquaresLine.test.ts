import * as fc from 'fast-check';
import { leastSquaresLine } from '../../../src/engine/water/leastSquaresLine.js';
import { norris } from '../published/NistNorris.js';

/** Agreement in significant digits, as NIST counts them. */
function digits(computed: number, certified: number): number {
  return computed === certified ? 15 : -Math.log10(Math.abs(computed - certified) / Math.abs(certified));
}

describe('leastSquaresLine', () => {
  it('gives the certified values of NistNorris to nine digits', () => {
    const line = leastSquaresLine(norris.x, norris.y);
    const { certified } = norris;
    expect(norris.x).toHaveLength(36);
    expect(digits(line.slope, certified.slope)).toBeGreaterThan(9);
    expect(digits(line.slopeDeviation, certified.slopeDeviation)).toBeGreaterThan(9);
    expect(digits(line.intercept, certified.intercept)).toBeGreaterThan(9);
    expect(digits(line.residualSquares, certified.residualSquares)).toBeGreaterThan(9);
    expect(digits(1 - line.residualSquares / line.totalSquares, certified.rSquared)).toBeGreaterThan(9);
    expect(line.freedom).toBe(certified.freedom);
  });

  it('gives the same slope however far the times lie from zero', () => {
    const near = leastSquaresLine(norris.x, norris.y);
    const far = leastSquaresLine(
      norris.x.map((x) => x + 46023),
      norris.y,
    );
    expect(digits(far.slope, near.slope)).toBeGreaterThan(9);
    expect(digits(far.slopeDeviation, near.slopeDeviation)).toBeGreaterThan(9);
  });

  it('leaves nothing over where the points lie on a line', () => {
    expect(leastSquaresLine([0, 1, 2, 3], [5, 7, 9, 11])).toEqual({
      slope: 2,
      intercept: 5,
      slopeDeviation: 0,
      residualSquares: 0,
      totalSquares: 20,
      freedom: 2,
    });
    expect(leastSquaresLine([0, 1, 2], [0.1, 0.1, 0.1])).toMatchObject({
      slope: 0,
      residualSquares: 0,
      totalSquares: 0,
    });
  });

  it('leaves residuals that no other slope or intercept makes smaller', () => {
    const points = fc.array(fc.tuple(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: -1000, max: 1000 })), {
      minLength: 3,
      maxLength: 30,
    });
    fc.assert(
      fc.property(points, (pairs) => {
        fc.pre(new Set(pairs.map(([x]) => x)).size > 1);
        const [x, y] = [pairs.map(([a]) => a), pairs.map(([, b]) => b)];
        const line = leastSquaresLine(x, y);
        const squares = (slope: number, intercept: number): number =>
          pairs.reduce((sum, [a, b]) => sum + (b - slope * a - intercept) ** 2, 0);
        const best = squares(line.slope, line.intercept);
        const slack = 1e-9 * (1 + best);
        return (
          Math.abs(best - line.residualSquares) <= slack &&
          [-0.01, 0.01].every((d) => squares(line.slope + d, line.intercept) >= best - slack) &&
          [-0.01, 0.01].every((d) => squares(line.slope, line.intercept + d) >= best - slack)
        );
      }),
    );
  });

  it('throws where there is no line to draw', () => {
    expect(() => leastSquaresLine([1, 2], [1, 2])).toThrow();
    expect(() => leastSquaresLine([1, 1, 1], [1, 2, 3])).toThrow();
    expect(() => leastSquaresLine([1, 2, 3], [1, 2])).toThrow();
  });
});
