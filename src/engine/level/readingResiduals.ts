import { eventKinds, type WaterEvents } from '../log/waterEvents.js';
import type { FilteredLevels } from './filteredLevels.js';
import type { LevelSteps } from './levelSteps.js';

/** How each reading stands to the model, an entry an event; NaN where there is no reading or nothing to compare it with. */
export interface ReadingResiduals {
  /** Low end of the reading − level expected from the whole log. [mg/L] */
  readonly residual: Float64Array;
  /** What the events before a reading lead to expect of it, and the standard deviation of the reading about that. [mg/L] */
  readonly predicted: Float64Array;
  readonly predictionSpread: Float64Array;
  /** (Reading − predicted) ÷ spread: standard normal where the model holds. A `>x` has none. [1] */
  readonly innovation: Float64Array;
}

/**
 * Residuals and one-step-ahead errors of the readings.
 *
 * predicted = thick·m⁻; spread = √(thick²·P⁻ + R); innovation = (y − predicted) ÷ spread
 *
 * Basis: m⁻, P⁻ of `filteredLevels`: events up to the reading, itself left out, at the rate of loss of the whole log.
 *   A `>x` has a prediction of the level, whose spread is without a meter's error.
 * Validity: the first reading has nothing before it, and so no prediction.
 * Definition: innovations of Kalman's filter.
 *
 * @returns a column each
 */
export function readingResiduals(given: {
  readonly events: WaterEvents;
  readonly steps: LevelSteps;
  readonly filtered: FilteredLevels;
  /** In the tank, after each event. [mg/L] */
  readonly expected: Float64Array;
}): ReadingResiduals {
  const { events, steps, filtered, expected } = given;
  const column = () => new Float64Array(steps.count);
  const residuals = { residual: column(), predicted: column(), predictionSpread: column(), innovation: column() };
  for (let index = 0; index < steps.count; index++) {
    const isReading = events.kind[index] === eventKinds.reading;
    const variance = filtered.aheadVariance[index] ?? NaN;
    residuals.residual[index] = isReading ? (events.amount[index] ?? NaN) - (expected[index] ?? NaN) : NaN;
    if (!isReading || variance === Infinity) {
      residuals.predicted[index] = residuals.predictionSpread[index] = residuals.innovation[index] = NaN;
      continue;
    }
    const thick = steps.thickBefore[index] ?? NaN;
    const read = steps.read[index] ?? NaN;
    const noise = steps.noise[index] ?? NaN;
    const predicted = thick * (filtered.ahead[index] ?? NaN);
    const spread = Math.sqrt(thick * thick * variance + (noise === noise ? noise : 0));
    residuals.predicted[index] = predicted;
    residuals.predictionSpread[index] = spread;
    residuals.innovation[index] = (read - predicted) / spread;
  }
  return residuals;
}
