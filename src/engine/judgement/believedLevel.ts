import * as limits from '../limits/limits.js';
import { startAt, carry, readingError, type Known, type Passing } from '../rules/steady/steadyKnown.js';
import { meterErrorAt } from '../rules/meterError.js';
import type { Treatment } from '../rules/treatment.js';
import { firstJudged } from './firstJudged.js';
import { tankLoss } from './tankLoss.js';

/** A reading that is not believed yet, or that a later one has shown to be a slip. */
interface Doubt {
  readonly row: number;
  readonly when: number;
  readonly written: number;
  /** What the log explains, in the tank. [mg/L] */
  readonly expected: number;
  /** 95 % of what the log explains. [mg/L] */
  readonly error: number;
}

/** What may be believed of the level, from the readings that are believed. */
export interface BelievedLevel {
  /** Right after the last event of the log, with its variance. [mg/L] */
  readonly level: number;
  readonly variance: number;
  /** [serial day] */
  readonly at: number;
  /** k of this tank's loss, and its standard deviation. [1/day] */
  readonly rate: number;
  readonly rateSpread: number;
  /** The last reading, where it is not believed; null: it is. */
  readonly doubt: Doubt | null;
  /** Earlier readings after which the level was where the log had led to: they are shown to be slips. */
  readonly slips: readonly Doubt[];
}

/** A dose is measured to within this much. [1] */
const doseSpread = 0.03;

/**
 * What is believed of the level: a filter that takes no reading in which the log does not explain.
 *
 * A reading over four standard deviations of log and meter from what the log explains is disbelieved. The next reading
 * settles it: within two meter errors of it, it was true; within two of what the log explains, it was a slip; neither:
 * once more, then the last counts.
 *
 * Basis: the model of `levelModel`, with this tank's loss drawn toward the form's usual one; a dose is off by 3 %.
 * Definition: common practice.
 *
 * @param treatment log and card
 * @returns level, loss and doubts; null where the log has no reading to start from
 */
export function believedLevel(treatment: Treatment): BelievedLevel | null {
  const { levels, events } = treatment;
  if (levels === null) return null;
  const { steps, course } = levels.path;
  const { rate, spread } = tankLoss(treatment);
  const passing: Passing = { steps, course: { rate, drift: course.drift }, scale: 1, count: events.count };
  const known: Known = { level: 0, variance: Infinity };
  const slips: Doubt[] = [];
  let open: OpenDoubt | null = null;
  for (let index = 0; index < events.count; index++) {
    carryDosed(known, passing, index);
    if (open !== null) carryDosed(open.from, passing, index);
    const reading = steps.read[index] ?? NaN;
    if (reading !== reading) continue;
    if (known.variance === Infinity) startAt(known, passing, index);
    else if (open === null) open = takeOrDoubt(treatment, known, passing, index);
    else open = settled(treatment, { known, open, passing, index, slips });
  }
  if (known.variance === Infinity) return null;
  const at = events.when[events.count - 1] ?? NaN;
  return { ...known, at, rate, rateSpread: spread, doubt: open?.doubts[open.doubts.length - 1] ?? null, slips };
}

interface OpenDoubt {
  /** The level if the doubted reading is true. */
  readonly from: Known;
  readonly doubts: readonly Doubt[];
}

interface Settling {
  readonly known: Known;
  readonly open: OpenDoubt;
  readonly passing: Passing;
  readonly index: number;
  readonly slips: Doubt[];
}

function carryDosed(known: Known, passing: Passing, index: number): void {
  carry(known, passing, index);
  const added = passing.steps.added[index] ?? 0;
  if (passing.steps.share[index] === 1) known.variance += (doseSpread * added) ** 2;
}

function takeOrDoubt(treatment: Treatment, known: Known, passing: Passing, index: number): OpenDoubt | null {
  const thick = passing.steps.thickAfter[index] ?? NaN;
  const off = (passing.steps.read[index] ?? NaN) - thick * known.level;
  const spread = Math.sqrt(thick * thick * known.variance + readingError(passing.steps, index));
  if (Math.abs(off) <= limits.disbelieved.value * spread) {
    takeIn(known, passing, index);
    return null;
  }
  if (index < firstJudged(treatment)) {
    startAt(known, passing, index);
    return null;
  }
  const from: Known = { level: 0, variance: 0 };
  startAt(from, passing, index);
  return { from, doubts: [doubtOf(treatment, thick * known.level, spread, index)] };
}

function doubtOf({ events }: Treatment, expected: number, spread: number, index: number): Doubt {
  const written = events.amount[index] ?? NaN;
  return { row: events.row[index] ?? 0, when: events.when[index] ?? NaN, written, expected, error: 2 * spread };
}

/** The next reading decides between the doubted one and what the log explains; where it fits neither, the one after it. */
function settled(treatment: Treatment, { known, open, passing, index, slips }: Settling): OpenDoubt | null {
  const { steps } = passing;
  const thick = steps.thickAfter[index] ?? NaN;
  const reading = steps.read[index] ?? NaN;
  const near = limits.settledWithin.value * meterErrorAt(treatment.card, reading);
  const offTrue = Math.abs(reading - thick * open.from.level);
  const offSlip = Math.abs(reading - thick * known.level);
  if (offSlip <= near && offSlip <= offTrue) {
    slips.push(...open.doubts);
    takeIn(known, passing, index);
    return null;
  }
  if (offTrue <= near || open.doubts.length > 1) {
    if (offTrue <= near) takeIn(Object.assign(known, open.from), passing, index);
    else startAt(known, passing, index);
    return null;
  }
  const from: Known = { level: 0, variance: 0 };
  startAt(from, passing, index);
  const spread = Math.sqrt(thick * thick * known.variance + readingError(steps, index));
  return { from, doubts: [...open.doubts, doubtOf(treatment, thick * known.level, spread, index)] };
}

function takeIn(known: Known, { steps }: Passing, index: number): void {
  const thick = steps.thickAfter[index] ?? NaN;
  const error = readingError(steps, index);
  const total = thick * thick * known.variance + error;
  known.level += ((thick * known.variance) / total) * ((steps.read[index] ?? NaN) - thick * known.level);
  known.variance = (known.variance * error) / total;
}
