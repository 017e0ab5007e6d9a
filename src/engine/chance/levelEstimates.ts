/** What the readings say about the true level at each of them; levels count from the limit. [mg/L] */
export interface LevelEstimates {
  /** Given the readings so far: mean and variance. */
  readonly mean: Float64Array;
  readonly variance: Float64Array;
  /** Given all readings: mean and standard deviation. */
  readonly finalMean: Float64Array;
  readonly finalSpread: Float64Array;
  /** Variance of what the level wanders from each reading to the next. */
  readonly step: Float64Array;
}

/**
 * The true level at each reading, given the readings up to it and given all of them, with no limit in its way.
 *
 * Forward, from mean r₁ and variance σ₁²: V = P + s²; gain = V ÷ (V + σ²); mean += gain·(r − mean); P = gain·σ².
 * Backward, from the last: g = P ÷ (P + s²); M = mean + g·(M_next − mean); S² = g·s² + g²·S²_next.
 *
 * Basis: s² = drift²·days between two readings; a flat prior before the first.
 * Definition: Kalman's filter of a random walk and the smoother of Rauch, Tung and Striebel (from memory).
 *
 * @param tested readings in time order
 * @returns a column each
 */
export function levelEstimates({ when, level, spread, low, drift }: TestedLevels): LevelEstimates {
  const count = level.length;
  const mean = new Float64Array(count);
  const variance = new Float64Array(count);
  const step = new Float64Array(count);
  for (let index = 0; index < count; index++) {
    const reading = (level[index] ?? NaN) - low;
    const noise = (spread[index] ?? NaN) ** 2;
    if (index === 0) {
      mean[index] = reading;
      variance[index] = noise;
      continue;
    }
    const wandered = drift * drift * ((when[index] ?? NaN) - (when[index - 1] ?? NaN));
    const expected = mean[index - 1] ?? NaN;
    const uncertain = (variance[index - 1] ?? NaN) + wandered;
    const gain = uncertain / (uncertain + noise);
    step[index - 1] = wandered;
    mean[index] = expected + gain * (reading - expected);
    variance[index] = gain * noise;
  }
  return { mean, variance, step, ...lookingBack(mean, variance, step) };
}

function lookingBack(
  mean: Float64Array,
  variance: Float64Array,
  step: Float64Array,
): Pick<LevelEstimates, 'finalMean' | 'finalSpread'> {
  const last = mean.length - 1;
  const finalMean = new Float64Array(mean);
  const finalSpread = new Float64Array(mean.length);
  let ahead = variance[last] ?? NaN;
  finalSpread[last] = Math.sqrt(ahead);
  for (let index = last - 1; index >= 0; index--) {
    const wandered = step[index] ?? NaN;
    const own = mean[index] ?? NaN;
    const share = (variance[index] ?? NaN) / ((variance[index] ?? NaN) + wandered);
    finalMean[index] = own + share * ((finalMean[index + 1] ?? NaN) - own);
    ahead = share * wandered + share * share * ahead;
    finalSpread[index] = Math.sqrt(ahead);
  }
  return { finalMean, finalSpread };
}

/** The tests of a level that wanders between them, one entry an instant. */
export interface TestedLevels {
  /** Rising: no two of one instant. [days] */
  readonly when: Float64Array | readonly number[];
  /** What the meter read. [mg/L] */
  readonly level: Float64Array | readonly number[];
  /** Standard deviation of each reading about the true level, above 0. [mg/L] */
  readonly spread: Float64Array | readonly number[];
  /** The limit that the true level must not go below. [mg/L] */
  readonly low: number;
  /** Standard deviation of what the true level wanders in a day, 0 or more. [mg/L per √day] */
  readonly drift: number;
}
