import { levelEstimates, type LevelEstimates, type TestedLevels } from './levelEstimates.js';
import { bellReach, meanUnderBell, vanishing, type MeanUnderBell } from './meanUnderBell.js';
import { panelCurve, type PanelCurve } from './panelCurve.js';
import { panelEdges } from './panelEdges.js';

/** A step whose variance is a smaller part than this of what is unknown of the level moves nothing. */
const standstill = 1e-18;
/** A chance that differs by less than this over all levels is one number; a chance below it is none. */
const negligible = 1e-9;

const usualMean = meanUnderBell(1);

/**
 * Chance that the true level never was below the limit from the first reading to the last, given the readings.
 *
 * P(x(t) ≥ m for all t from t₁ to t_n | r₁ … r_n), with
 *   x a Brownian motion, variance drift²·days; r_i = x(t_i) + error, normal, standard deviation σ_i; x(t₁) flat.
 *
 * Write u for the level above m at a reading, q_i(u) for the chance not to have been below m up to t_i given the level
 * there and the readings up to it. Then, with μ, P the filter's mean and variance at t_i (levelEstimates), s² = drift²·days,
 *   q₁(u) = 1 for u ≥ 0
 *   q_(i+1)(u) = ∫₀^∞ N(v; b, c²)·(1 − e^(−2uv/s²))·q_i(v) dv,  b = (μs² + Pu) ÷ (P + s²),  c² = Ps² ÷ (P + s²)
 *   chance = ∫₀^∞ N(u; μ_n, P_n)·q_n(u) du
 * N(v; b, c²) is the level at t_i as seen from a known level u at t_(i+1); the bracket is the chance that a Brownian
 * bridge from v to u does not touch 0. It is the image kernel φ(u − v) − φ(u + v) divided by the kernel φ(u − v) of a
 * motion without a limit: with both normalised by the filter no likelihood is left to compute, q stays from 0 to 1, and
 * an error made in one step is averaged, never amplified, by the later ones.
 *
 * Basis: each q is held as polynomials on panels over mean ± 6.5 standard deviations of the level given all readings,
 *   which is where a path can have been; the panels halve towards the limit down to the thickness of the layer in which
 *   q falls to 0. Integrals by Gauss-Legendre with 24 points. Within 0.0001 of four times that over levels, spreads,
 *   steps and drifts of many decades.
 * Validity: every spread above 0, days rising. Drift 0 is a constant level.
 * Definition: a random walk read with normal errors; the bridge's chance and the image kernel by the reflection
 *   principle. Errors that a meter makes alike on every day (a wrong calibration) are not in it.
 *
 * @param tested the readings, an entry an instant [days, mg/L]
 * @param fineness 1 as a rule; 2 halves the panels and doubles the points, to see that nothing changes
 * @returns from 0 to 1 [1]
 * @example chanceNeverBelow({ when: [46082], level: [2], spread: [0.05], low: 1.95, drift: 0.0195 }) // ≈ 0.8413447
 */
export function chanceNeverBelow(tested: TestedLevels, fineness = 1): number {
  const estimates = levelEstimates(tested);
  const mean = fineness === 1 ? usualMean : meanUnderBell(fineness);
  const last = estimates.mean.length - 1;
  let held = levelCurve(1);
  let layer = 0;
  for (let index = 0; index < last && held.highest > negligible; index++) {
    const step = estimates.step[index] ?? NaN;
    const variance = estimates.variance[index] ?? NaN;
    if (step <= standstill * variance) continue;
    layer = layerAfter(layer, { step, variance, mean: estimates.mean[index] ?? NaN });
    if (held.highest === held.lowest && isOutOfReach(estimates, index)) continue;
    held = heldAtNext({ held, estimates, index, layer, fineness, mean });
    if (held.highest - held.lowest < negligible) held = levelCurve((held.highest + held.lowest) / 2);
  }
  const bell = { centre: estimates.mean[last] ?? NaN, spread: Math.sqrt(estimates.variance[last] ?? NaN) };
  return Math.min(1, Math.max(0, mean(held, bell, Infinity)));
}

/** A curve that is the same everywhere. */
function levelCurve(value: number): PanelCurve {
  return panelCurve(Float64Array.of(0, 1), () => value);
}

/** q at the next reading, from q at this one. */
function heldAtNext(given: {
  held: PanelCurve;
  estimates: LevelEstimates;
  index: number;
  layer: number;
  fineness: number;
  mean: MeanUnderBell;
}): PanelCurve {
  const { held, estimates, index, layer, fineness, mean } = given;
  const step = estimates.step[index] ?? NaN;
  const variance = estimates.variance[index] ?? NaN;
  const share = variance / (variance + step);
  const centre = (estimates.mean[index] ?? NaN) * (step / (variance + step));
  const spread = Math.sqrt(share * step);
  const edges = panelEdges({
    mean: estimates.finalMean[index + 1] ?? NaN,
    spread: estimates.finalSpread[index + 1] ?? NaN,
    layer,
    fineness,
  });
  return panelCurve(edges, (u) => mean(held, { centre: centre + share * u, spread }, (2 * u) / step));
}

/**
 * How thick the layer over the limit is in which q falls to 0 after a step: what the level has wandered since the first
 * reading, or less where the filter had it well above the limit, since only the bracket is left to bring q down there.
 */
function layerAfter(layer: number, { step, variance, mean }: { step: number; variance: number; mean: number }): number {
  const wandered = Math.sqrt(layer * layer + step);
  return mean > 0 ? Math.min(wandered, (variance + step) / (2 * mean)) : wandered;
}

/** Whether no path that the readings leave possible can touch the limit between this reading and the next. */
function isOutOfReach({ finalMean, finalSpread, step }: LevelEstimates, index: number): boolean {
  const lowestAt = (reading: number) => (finalMean[reading] ?? NaN) - bellReach * (finalSpread[reading] ?? NaN);
  const here = lowestAt(index);
  const next = lowestAt(index + 1);
  return here > 0 && next > 0 && 2 * here * next > vanishing * (step[index] ?? NaN);
}
