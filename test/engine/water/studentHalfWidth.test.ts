import { jStat } from 'jstat';
import { leastSquaresLine } from '../../../src/engine/water/leastSquaresLine.js';
import { studentHalfWidth } from '../../../src/engine/water/studentHalfWidth.js';
import { norris } from '../published/NistNorris.js';
import { expectPrinted } from '../published/publishedTable.js';

describe('studentHalfWidth', () => {
  it('has a closed form at one and two degrees of freedom', () => {
    // One: the Cauchy distribution, tan(π·0.95 ÷ 2). Two: A = t ÷ √(2 + t²), so t = A·√(2 ÷ (1 − A²)).
    expect(studentHalfWidth(0.95, 1)).toBeCloseTo(Math.tan((Math.PI * 0.95) / 2), 11);
    expect(studentHalfWidth(0.95, 2)).toBeCloseTo(0.95 * Math.sqrt(2 / (1 - 0.95 ** 2)), 12);
  });

  it.each([1, 2, 3, 4, 5, 7, 10, 30, 34, 101, 1000])('agrees with an independent library at %p', (freedom) => {
    for (const coverage of [0.5, 0.9, 0.95, 0.99]) {
      const other = jStat.studentt.inv(0.5 + coverage / 2, freedom);
      expect(Math.abs(studentHalfWidth(coverage, freedom) / other - 1)).toBeLessThan(1e-6);
    }
  });

  it('comes down to the normal 1.959964 with very many', () => {
    expect(studentHalfWidth(0.95, 1_000_000)).toBeCloseTo(1.959966, 6);
  });

  it('gives the 95 % interval of the slope of NistNorris', () => {
    const line = leastSquaresLine(norris.x, norris.y);
    const half = studentHalfWidth(0.95, line.freedom) * line.slopeDeviation;
    expectPrinted(line.slope - half, norris.interval.low);
    expectPrinted(line.slope + half, norris.interval.high);
  });
});
