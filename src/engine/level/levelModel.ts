import { eventKinds, type WaterEvents } from '../log/waterEvents.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import {
  fraction,
  type CopperMgPerLitre,
  type CopperMgPerMl,
  type CopperPerRootDay,
  type Fraction,
  type Litres,
} from '../units/quantity.js';
import { filteredLevels } from './filteredLevels.js';
import { levelBands, type LevelBands } from './levelBands.js';
import type { LevelPath } from './levelAfter.js';
import { levelSteps } from './levelSteps.js';
import { lossEstimate } from './lossEstimate.js';
import { massBalance, type MassBalance } from './massBalance.js';
import { readingResiduals, type ReadingResiduals } from './readingResiduals.js';
import { smoothedLevels } from './smoothedLevels.js';

interface Modelled {
  readonly events: WaterEvents;
  readonly volume: Litres;
  /** null: not known; then there may be no dose. */
  readonly strength: CopperMgPerMl | null;
  readonly accuracy: CopperMgPerLitre;
  readonly percent: Fraction;
  readonly drift: CopperPerRootDay;
  /** k [1/day], where it is not to be estimated. */
  readonly lossRate?: number;
}

/** The level that the whole log explains. Columns have an entry an event; NaN: nothing is known, or there is no reading. */
export interface LevelModel extends LevelBands, ReadingResiduals {
  /** k: e^(−k·t) is left after t days. [1/day] */
  readonly lossRate: number;
  /** Its standard deviation; 0 where the rate was given or there are too few readings to estimate one. [1/day] */
  readonly lossRateSpread: number;
  /** Share of the level that is lost in a day: 1 − e^(−k). */
  readonly lossPerDay: Fraction;
  readonly massBalance: () => MassBalance;
  /** For the level at other times. */
  readonly path: LevelPath;
}

/**
 * The level of copper at every event, from the whole log: mass balance, loss, drift and the meter's errors.
 *
 * C⁻ = e^(−k·t)·C + w, w normal with variance drift²·(1 − e^(−2kt)) ÷ 2k      (C: copper ÷ net volume)
 * C  = C⁻ + mL·strength ÷ V                                                  dose
 * C  = C⁻·(1 − s) + s·r·(V − lost) ÷ V, s = L ÷ (V − lost)                   change of L at level r; matched: C⁻
 * reading = C·V ÷ (V − lost) + error, σ = (accuracy + percent·reading + half its width) ÷ 1.96
 *
 * Expected is the mean of the level given all readings, low and high hold it with 95 % (normal, cut at 0).
 *
 * Basis: one state, linear and Gaussian. Before the first event any level goes (exact flat prior). Water evaporates
 *   evenly between top-offs (`evaporated`). A corrected net volume leaves the level as it is. `<x` is read as x/2 with
 *   half of x as its width; `>x` is listed, and says nothing to the model. k by maximum likelihood with a weak prior
 *   toward 0 (`lossEstimate`), its uncertainty carried into the band; under three readings 0. Errors that a meter makes
 *   alike on every day are not in it.
 * Validity: at least one reading that is not `>x`; a strength where there are doses; accuracy and percent not both 0.
 * Definition: Kalman's filter with exact diffuse start, and the fixed-interval smoother of Rauch, Tung and Striebel
 *   (from memory); checked against a general-purpose filter and against the joint normal written down whole.
 *
 * @param modelled.events in the order in which they happened
 * @param modelled.volume net volume before the first volume event [L]
 * @param modelled.strength of the dosing solution [mg Cu/mL]
 * @param modelled.accuracy of the meter, ± at 95 % [mg/L]
 * @param modelled.percent of the reading, added to it [1]
 * @param modelled.drift standard deviation of what the level wanders [mg/L per √day]
 * @param modelled.lossRate k, if known [1/day]
 * @returns columns, loss and mass balance
 */
export function levelModel(modelled: Modelled): Result<LevelModel, Problem> {
  const { events, volume, drift } = modelled;
  const fault = faultOf(modelled);
  if (fault !== null) return refuse(fault);
  const steps = levelSteps(modelled);
  if (steps.readings === 0) return refuse({ code: 'no-reading' });
  const { lossRate: given } = modelled;
  const { rate, spread } = given === undefined ? lossEstimate(steps, drift) : { rate: given, spread: 0 };
  // A rate somewhat further first: its columns are written over by those of the rate itself.
  const further = spread / 10;
  const moved = spread === 0 ? null : filteredLevels(steps, { rate: rate + further, drift });
  const movedMean = moved === null ? null : smoothedLevels(steps, moved).mean;
  const filtered = filteredLevels(steps, { rate, drift }, moved ?? undefined);
  const smoothed = smoothedLevels(steps, filtered);
  const sensitivity = slopes(smoothed.mean, movedMean, further);
  const bands = levelBands({ steps, filtered, smoothed, sensitivity, rateSpread: spread });
  return ok({
    ...bands,
    ...readingResiduals({ events, steps, filtered, expected: bands.expected }),
    lossRate: rate,
    lossRateSpread: spread,
    lossPerDay: fraction(-Math.expm1(-rate)),
    massBalance: () => massBalance({ events, steps, filtered, smoothed, volume }),
    path: { course: { rate, drift }, rateSpread: spread, steps, filtered, smoothed, sensitivity },
  });
}

function faultOf({ events, strength, accuracy, percent }: Modelled): Problem | null {
  if (accuracy <= 0 && percent <= 0) return { code: 'meter-without-error' };
  const isDosed = strength === null && events.kind.includes(eventKinds.dose);
  return isDosed ? { code: 'blank', at: { field: 'strength' }, kind: 'strength' } : null;
}

/** How the smoothed level after each event changes with the rate of loss: by its difference from that at a rate further on. */
function slopes(mean: Float64Array, moved: Float64Array | null, further: number): Float64Array {
  if (moved === null) return new Float64Array(mean.length);
  for (let index = 0; index < mean.length; index++) {
    moved[index] = ((moved[index] ?? NaN) - (mean[index] ?? NaN)) / further;
  }
  return moved;
}
