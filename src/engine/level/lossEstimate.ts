import type { LevelSteps } from './levelSteps.js';
import { lossScore, type LossScore } from './lossScore.js';

/** The rate at which copper is lost, a constant share of the level, and how well the log shows it. */
interface LossEstimate {
  /** k: what is left after t days is e^(−k·t). [1/day] */
  readonly rate: number;
  /** Standard deviation of the rate [1/day]; 0 where the rate is not estimated. */
  readonly spread: number;
  /** Passes over the log that the search took. */
  readonly passes: number;
}

/** The fastest loss that is searched for. [1/day] */
const fastestLoss = 0.5;
/** Scale of the half-normal prior: the usual loss of free copper, the fastest of the forms, 10 % a day. [Practice] */
const usualScale = 0.1;
const priorInformation = 1 / usualScale ** 2;
/** Fewer readings than this show no loss: two levels fit any rate. */
const fewestReadings = 3;
const mostPasses = 12;
/** The search ends at a step smaller than this part of the rate's own spread; that last step is still taken. */
const closeEnough = 1e-4;

/**
 * Rate of loss, by maximum likelihood with a weak prior toward none.
 *
 * k maximises ln L(k) − k² ÷ (2·0.1²) for 0 ≤ k ≤ 0.5; spread = 1 ÷ √(information + 1 ÷ 0.1²)
 *
 * The first step from 0 is that of the linearised problem (Fisher's scoring, k₁ = slope ÷ information), the next ones are
 * secants of the slope inside the bracket that the slope's sign leaves, halved where a step would leave it. Where the
 * slope at 0 is not upward the answer is 0.
 *
 * Basis: half-normal prior of scale 0.1 a day, which weighs as much as a log whose own spread of k is 0.1 a day: it
 *   keeps a handful of readings in one afternoon from showing a loss of 30 % a day, and moves a month of daily readings
 *   by less than a fiftieth of its spread. Under three readings the rate is 0, not estimated.
 * Validity: one maximum; tested against a search over the whole interval.
 * Definition: maximum of the penalised likelihood of `lossScore`.
 *
 * @param steps of the events
 * @param drift standard deviation of what a level wanders [mg/L per √day]
 * @returns rate and its spread [1/day]
 */
export function lossEstimate(steps: LevelSteps, drift: number): LossEstimate {
  if (steps.readings < fewestReadings) return { rate: 0, spread: 0, passes: 0 };
  const judged = (rate: number) => penalised(lossScore(steps, { rate, drift }), rate);
  let [low, high] = [0, Infinity];
  let [before, rate] = [0, 0];
  let now = judged(0);
  let last = now;
  let passes = 1;
  while (passes < mostPasses) {
    if (now.slope > 0) low = rate;
    else high = rate;
    if (high === 0 || low === fastestLoss) break;
    const steep = passes === 1 ? now.information : (last.slope - now.slope) / (rate - before);
    const step = now.slope / (steep > 0 ? steep : now.information);
    const next = within(rate + step, low, high);
    [before, last, rate] = [rate, now, next];
    if (Math.abs(rate - before) * Math.sqrt(now.information) < closeEnough) break;
    now = judged(rate);
    passes++;
  }
  return { rate, spread: 1 / Math.sqrt(now.information), passes };
}

function penalised({ slope, information }: LossScore, rate: number): Omit<LossScore, 'logLikelihood'> {
  return { slope: slope - rate * priorInformation, information: information + priorInformation };
}

/** A step as it is, or half the way to the end of the bracket that it would pass; the fastest loss is tried itself. */
function within(next: number, low: number, high: number): number {
  if (next > low && next < Math.min(high, fastestLoss)) return next;
  return high === Infinity && next > low ? fastestLoss : (low + Math.min(high, fastestLoss)) / 2;
}
