import { gaussLegendre } from './gaussLegendre.js';
import { panelPoints, type PanelCurve } from './panelCurve.js';

// Taken once: some hosts run the bundle where every look at a global is slow.
const { PI, exp, expm1, max, min, sqrt } = Math;

/** How far from its centre a bell is followed: 8e-11 of it lies beyond. [standard deviations] */
export const bellReach = 6.5;

/** Past this exponent e^−x is nothing. */
export const vanishing = 40;

const usualPoints = 24;

/** A normal density. */
interface Bell {
  readonly centre: number;
  /** Standard deviation. */
  readonly spread: number;
}

/** The mean of a curve above 0 under a bell, weighted with 1 − e^(−untouched·v). */
export type MeanUnderBell = (curve: PanelCurve, bell: Bell, untouched: number) => number;

/**
 * Integrals over the levels above the limit, as a function to call for each.
 *
 * ∫₀^∞ N(v; centre, spread²)·(1 − e^(−untouched·v))·curve(v) dv
 *
 * Basis: v counts from the limit; `untouched` Infinity leaves the bracket out.
 * Definition: Gauss-Legendre over ± 6.5 spreads; where 0 cuts that short, over v = top·x², whose points crowd at 0,
 * where curve and bracket change fastest.
 *
 * @param fineness 1 as a rule; 2 doubles the points
 * @returns the integral as a function of curve, bell and untouched [1]
 */
export function meanUnderBell(fineness: number): MeanUnderBell {
  const { points, weights } = gaussLegendre(usualPoints * fineness);
  const wholeAt = points.map((x) => bellReach * x);
  const wholeWeights = weights.map((weight, index) => weight * bellReach * density(wholeAt[index] ?? NaN));
  const cutAt = points.map((x) => ((1 + x) / 2) ** 2);
  const cutWeights = weights.map((weight, index) => (weight * (1 + (points[index] ?? NaN))) / 2);
  return (curve, { centre, spread }, untouched) => {
    const top = centre + bellReach * spread;
    if (top <= 0) return 0;
    const isCut = centre < bellReach * spread;
    const lastPanel = curve.edges.length - 2;
    let panel = 0;
    let sum = 0;
    for (let index = 0; index < points.length; index++) {
      const v = isCut ? top * (cutAt[index] ?? NaN) : centre + spread * (wholeAt[index] ?? NaN);
      const weight = isCut
        ? (cutWeights[index] ?? NaN) * (top / spread) * density((v - centre) / spread)
        : (wholeWeights[index] ?? NaN);
      const exponent = untouched * v;
      while (panel < lastPanel && v > (curve.edges[panel + 1] ?? NaN)) panel++;
      sum += weight * (exponent < vanishing ? -expm1(-exponent) : 1) * heightAt(curve, panel, v);
    }
    return sum;
  };
}

/** The curve at v, which lies in the panel, or beyond the first edge or the last. */
function heightAt({ edges, coefficients }: PanelCurve, panel: number, v: number): number {
  const left = edges[panel] ?? NaN;
  const place = min(1, max(-1, (2 * (v - left)) / ((edges[panel + 1] ?? NaN) - left) - 1));
  const first = panel * panelPoints;
  let height = 0;
  for (let power = panelPoints - 1; power >= 0; power--) height = height * place + (coefficients[first + power] ?? NaN);
  return height;
}

/** The standard normal's density. */
function density(z: number): number {
  return exp(-0.5 * z * z) / rootTwoPi;
}

const rootTwoPi = sqrt(2 * PI);
