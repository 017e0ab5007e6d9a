import type { LevelModel } from '../../level/levelModel.js';
import type { Treatment } from '../treatment.js';
import { gate, steadyPass, type SteadyPass } from './steadyPass.js';
import { copperForms } from '../../dose/forms.js';
import type { Card } from '../../log/card.js';

export interface SteadyLevels extends SteadyPass {
  /** k of the loss that fits the log best when stray readings and jumps are left out. [1/day] */
  readonly rate: number;
}

/** Below this no reading is worth a second look at the whole log. */
const noSurprise = gate - 1;
/** Rates of loss to start from [1/day]. */
const triedRates = [0, 0.005, 0.012, 0.025, 0.05, 0.09, 0.15, 0.25, 0.4];
/** The rate is settled on the events up to this one: more show it no better. */
const rateEvents = 800;
/** Readings scatter about the prediction by this much of a standard deviation, half of them by more. */
const halfOfNormal = 0.6745;
/** No log is taken for noisier than this many times what its card says. */
const widest = 4;
const fewestForScale = 8;

const known = new WeakMap<Treatment, SteadyLevels>();

/**
 * What the log leads to expect of each reading, slips and jumps kept from spoiling it; null where there is no model.
 *
 * Basis: where no reading of the whole model is a surprise its own predictions stand. Otherwise the rate of loss is the
 *   one under which `steadyPass` finds the readings likeliest, and the spreads are widened to what half of the
 *   readings show, where a meter does worse than its card says.
 * Definition: a robust fit of the model of `levelModel`.
 */
export function steadyLevels(treatment: Treatment): SteadyLevels | null {
  const { levels } = treatment;
  if (levels === null) return null;
  const before = known.get(treatment);
  if (before !== undefined) return before;
  const steady = fitted(levels, usualLossRate(treatment.card));
  known.set(treatment, steady);
  return steady;
}

function fitted(levels: LevelModel, usual: number): SteadyLevels {
  const { steps, course, filtered } = levels.path;
  const { drift } = course;
  const { count } = steps;
  if (!isSurprising(levels.innovation))
    return { ...steadyPass({ steps, course, scale: 1, count, filtered }), rate: course.rate };
  const counted = Math.min(count, rateEvents);
  const costsAt = (scale: number): ((rate: number) => number) =>
    remembered((rate) => steadyPass({ steps, course: { rate, drift }, scale, count: counted }).cost);
  const costOf = costsAt(1);
  const rough = likeliest(triedRates.concat(course.rate, usual), costOf);
  const scale = scaleOf(steadyPass({ steps, course: { rate: rough, drift }, scale: 1, count }));
  const rate = refined(rough, scale === 1 ? costOf : costsAt(scale));
  return { ...steadyPass({ steps, course: { rate, drift }, scale, count }), rate };
}

/** A loop: a call for each reading of a long log would cost more than the pass. */
function isSurprising(innovation: Float64Array): boolean {
  for (const off of innovation) if (Math.abs(off) > noSurprise) return true;
  return false;
}

/** The search comes back to the best rate at each step. */
function remembered(costOf: (rate: number) => number): (rate: number) => number {
  const known = new Map<number, number>();
  return (rate) => {
    const cost = known.get(rate) ?? costOf(rate);
    known.set(rate, cost);
    return cost;
  };
}

function likeliest(rates: readonly number[], costOf: (rate: number) => number): number {
  let [best, least] = [0, Infinity];
  for (const rate of rates) {
    const cost = costOf(rate);
    if (cost < least) [best, least] = [rate, cost];
  }
  return best;
}

/** A few steps of halving width about a rough rate. */
function refined(rough: number, costOf: (rate: number) => number): number {
  let width = Math.max(0.003, rough / 3);
  let best = rough;
  for (let step = 0; step < 4; step++, width /= 2) {
    best = likeliest([best, Math.max(0, best - width), best + width], costOf);
  }
  return best;
}

function scaleOf({ off }: SteadyPass): number {
  const sizes = off.filter((each) => each === each);
  let small = 0;
  for (let index = 0; index < sizes.length; index++) {
    const size = Math.abs(sizes[index] ?? NaN);
    if (size <= halfOfNormal) small++;
    sizes[index] = size;
  }
  const middle = sizes.length >>> 1;
  // Most meters do no worse than their card says, and nothing needs sorting to see it.
  if (sizes.length < fewestForScale || small > middle) return 1;
  return Math.min(widest, Math.max(1, (sizes.sort()[middle] ?? halfOfNormal) / halfOfNormal));
}

/** k of half the loss that is usual for the card's form; 0 where it names none. [1/day] */
export function usualLossRate({ form }: Card): number {
  return form === null ? 0 : -Math.log1p(-copperForms[form].usualLossPerDay) / 2;
}
