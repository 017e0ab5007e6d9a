import { gaussLegendre } from './gaussLegendre.js';

// Taken once: some hosts run the bundle where every look at a global is slow.
const { max, min } = Math;

/** Points in a panel: a polynomial one degree less goes through them. */
export const panelPoints = 8;

/** A curve over panels that join, a polynomial on each, level beyond the first edge and the last. */
export interface PanelCurve {
  readonly edges: Float64Array;
  /** panelPoints a panel, by rising power of the place in the panel from −1 to 1. */
  readonly coefficients: Float64Array;
  /** Of the values the curve was drawn through. */
  readonly lowest: number;
  readonly highest: number;
}

const { points, weights } = gaussLegendre(panelPoints);
const fit = fitMatrix();

/**
 * The curve through a function's values at the Gauss-Legendre points of each panel.
 *
 * value(x) = Σ_d (d + 1/2)·P_d(x)·Σ_i w_i·P_d(x_i)·value_i, x from −1 to 1 in the panel
 *
 * Definition: the polynomial of least degree that meets the values of the panel, by Legendre's polynomials.
 *
 * @param edges rising, at least two [mg/L]
 * @param valueAt the function
 * @returns the curve
 */
export function panelCurve(edges: Float64Array, valueAt: (place: number) => number): PanelCurve {
  const panels = edges.length - 1;
  const coefficients = new Float64Array(panels * panelPoints);
  let lowest = Infinity;
  let highest = -Infinity;
  for (let panel = 0; panel < panels; panel++) {
    const left = edges[panel] ?? NaN;
    const half = ((edges[panel + 1] ?? NaN) - left) / 2;
    const first = panel * panelPoints;
    for (let point = 0; point < panelPoints; point++) {
      const value = valueAt(left + half * (1 + (points[point] ?? NaN)));
      lowest = min(lowest, value);
      highest = max(highest, value);
      for (let power = 0; power < panelPoints; power++) {
        const share = value * (fit[power * panelPoints + point] ?? NaN);
        coefficients[first + power] = (coefficients[first + power] ?? NaN) + share;
      }
    }
  }
  return { edges, coefficients, lowest, highest };
}

/** From values at the points to coefficients by power: row power, column point. */
function fitMatrix(): Float64Array {
  const matrix = new Float64Array(panelPoints * panelPoints);
  for (const [degree, polynomial] of legendrePolynomials(panelPoints).entries()) {
    for (let point = 0; point < panelPoints; point++) {
      const x = points[point] ?? NaN;
      const atPoint = polynomial.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
      const share = (degree + 0.5) * (weights[point] ?? NaN) * atPoint;
      for (const [power, coefficient] of polynomial.entries()) {
        const at = power * panelPoints + point;
        matrix[at] = (matrix[at] ?? NaN) + share * coefficient;
      }
    }
  }
  return matrix;
}

/** Coefficients by rising power of P_0, P_1, …: n·P_n = (2n − 1)·x·P_(n−1) − (n − 1)·P_(n−2). */
function legendrePolynomials(count: number): number[][] {
  const polynomials = [[1], [0, 1]];
  for (let n = 2; n < count; n++) {
    const [older = [], newer = []] = polynomials.slice(n - 2);
    polynomials.push([0, ...newer].map((c, power) => ((2 * n - 1) * c - (n - 1) * (older[power] ?? 0)) / n));
  }
  return polynomials;
}
