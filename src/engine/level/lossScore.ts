import type { Course } from './filteredLevels.js';
import type { LevelSteps } from './levelSteps.js';
import { wandering, wanderingSlope } from './wandering.js';

/** How well a rate of loss explains the readings. */
export interface LossScore {
  /** ln L, up to a constant. */
  readonly logLikelihood: number;
  /** d ln L ÷ dk. [day] */
  readonly slope: number;
  /** Fisher's information on k, expected. [day²] */
  readonly information: number;
}

/**
 * The likelihood of the readings as a function of the rate of loss, with its slope, in one pass of the filter.
 *
 * ln L = −½ Σ (ln F + v² ÷ F), v = y − thick·m⁻, F = thick²·P⁻ + R, over the readings after the first
 * slope = Σ (−½·F' ÷ F + ½·v²·F' ÷ F² − v·v' ÷ F);  information = Σ (v'² ÷ F + ½·(F' ÷ F)²)
 * with ' = d/dk carried along by the filter's own equations differentiated:
 * T' = −t·T; m⁻' = T'·m + T·m'; P⁻' = 2·T·T'·P + T²·P' + share²·drift²·q'; m' = m⁻' + K'·v + K·v'; P' = P⁻'·R² ÷ F²
 *
 * Basis: flat in the level at the first reading, so that how long the log runs before it does not count; the errors and
 *   the drift are as given.
 * Definition: prediction error decomposition of a Gaussian likelihood (from memory).
 *
 * @param steps of the events
 * @param course the rate to judge, and the drift
 * @returns ln L [1], its slope [day] and the information [day²]
 */
export function lossScore(steps: LevelSteps, course: Course): LossScore {
  const state = {
    level: 0,
    levelSlope: 0,
    uncertain: Infinity,
    uncertainSlope: 0,
    squares: 0,
    logSpreads: 0,
    spreads: 1,
    slope: 0,
    information: 0,
  };
  const { count, read } = steps;
  for (let index = 0; index < count; index++) {
    carry(state, steps, index, course);
    const reading = read[index] ?? NaN;
    if (reading === reading) learn(state, reading, steps.thickAfter[index] ?? NaN, steps.noise[index] ?? NaN);
  }
  const { slope, information } = state;
  return { logLikelihood: -0.5 * (state.logSpreads + Math.log(state.spreads) + state.squares), slope, information };
}

/** Products of variances between these do not leave the numbers that there are. */
const leastProduct = 1e-100;
const mostProduct = 1e100;

/** Written over from event to event: an object for each of them would cost more than the sums. */
interface State {
  level: number;
  levelSlope: number;
  uncertain: number;
  uncertainSlope: number;
  /** Σ v² ÷ F */
  squares: number;
  /** Σ ln F, and the product of those F that are not in it yet: a logarithm for each reading is most of the cost. */
  logSpreads: number;
  spreads: number;
  slope: number;
  information: number;
}

function carry(state: State, { elapsed, share, added }: LevelSteps, index: number, { rate, drift }: Course): void {
  const days = elapsed[index] ?? NaN;
  const left = share[index] ?? NaN;
  if (days === 0 && left === 1) {
    state.level += added[index] ?? NaN;
    return;
  }
  const kept = left * Math.exp(-rate * days);
  const drifted = left * left * drift * drift;
  state.levelSlope = kept * (state.levelSlope - days * state.level);
  state.level = kept * state.level + (added[index] ?? NaN);
  if (kept * kept === 0) {
    state.uncertainSlope = drifted * wanderingSlope(rate, days);
    state.uncertain = drifted * wandering(rate, days);
  } else if (state.uncertain < Infinity) {
    const slope = kept * kept * (state.uncertainSlope - 2 * days * state.uncertain);
    state.uncertainSlope = slope + drifted * wanderingSlope(rate, days);
    state.uncertain = kept * kept * state.uncertain + drifted * wandering(rate, days);
  }
}

function learn(state: State, reading: number, thick: number, error: number): void {
  if (state.uncertain === Infinity) {
    state.level = reading / thick;
    state.levelSlope = 0;
    state.uncertain = error / (thick * thick);
    return;
  }
  const off = reading - thick * state.level;
  const offSlope = -thick * state.levelSlope;
  const spread = thick * thick * state.uncertain + error;
  const growth = (thick * thick * state.uncertainSlope) / spread;
  const surprise = off / spread;
  state.squares += off * surprise;
  state.spreads *= spread;
  if (state.spreads < leastProduct || state.spreads > mostProduct) {
    state.logSpreads += Math.log(state.spreads);
    state.spreads = 1;
  }
  state.slope += 0.5 * growth * (off * surprise - 1) - surprise * offSlope;
  state.information += (offSlope * offSlope) / spread + 0.5 * growth * growth;
  const gain = (thick * state.uncertain) / spread;
  const settled = error / spread;
  state.level += gain * off;
  state.levelSlope += thick * state.uncertainSlope * settled * surprise + gain * offSlope;
  state.uncertain *= settled;
  state.uncertainSlope *= settled * settled;
}
