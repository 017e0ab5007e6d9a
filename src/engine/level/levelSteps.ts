import { eventKinds, type WaterEvents } from '../log/waterEvents.js';
import type { CopperMgPerLitre, CopperMgPerMl, Fraction, Litres } from '../units/quantity.js';
import { evaporated } from './evaporated.js';
import { thickness } from './thickness.js';

/** Standard deviations to either side that hold 95 % of a normal; from memory. */
export const bandSpreads = 1.96;

/** What each event does to the level, and what each reading says of it, a column each. Levels are those of the full system. */
export interface LevelSteps {
  readonly count: number;
  /** Days since the event before. */
  readonly elapsed: Float64Array;
  /** The event turns a level into share·level + added. [1, mg/L] */
  readonly share: Float64Array;
  readonly added: Float64Array;
  /** Level in the tank ÷ level of the full system, just before the event and right after it: what evaporation makes of it. */
  readonly thickBefore: Float64Array;
  readonly thickAfter: Float64Array;
  /** Net volume after the event. [L] */
  readonly volume: Float64Array;
  /** What a reading says of the level in the tank [mg/L], and the variance of its error; NaN where there is none. */
  readonly read: Float64Array;
  readonly noise: Float64Array;
  /** Readings that say something of the level. */
  readonly readings: number;
  /** Litres that go on evaporating a day after the last event, how many may be missing, and how many are. */
  readonly evaporation: { readonly rate: number; readonly most: number; readonly missing: number };
}

interface Given {
  readonly events: WaterEvents;
  readonly volume: Litres;
  readonly strength: CopperMgPerMl | null;
  readonly accuracy: CopperMgPerLitre;
  readonly percent: Fraction;
}

/** A change that leaves less than this of the old water leaves nothing. */
const nothingLeft = 1e-6;
/** A meter is never taken as better than this [mg/L]: a percent of 0 is no error at all. */
const finestSpread = 1e-6;

/**
 * Events as steps of a linear model of the level.
 *
 * dose: level + mL·strength ÷ V; change of L at r: s = L ÷ (V − lost), level·(1 − s) + r·s·(V − lost) ÷ V;
 * matched change and top-off: level; volume: the level in the tank stays, so level·thick before ÷ thick after
 * level in the tank = level·thick, thick = V ÷ (V − lost)
 * reading from low to high: (low + high) ÷ 2 ± (accuracy + percent·(low + high) ÷ 2 + (high − low) ÷ 2), at 95 %
 *
 * Basis: copper as the element; level of the full system = copper ÷ net volume. A bound from below (`>x`) has no high
 *   end and says nothing here; a bound from above (`<x`) is a range from 0.
 * Validity: a strength wherever there is a dose. At most half the water counts as evaporated; a change takes no more
 *   than there is.
 * Definition: mass balance of well-mixed water.
 *
 * @returns a column each
 */
export function levelSteps(given: Given): LevelSteps {
  const { events } = given;
  const { count, when, kind, amount } = events;
  const lost = evaporated(events);
  const steps = { ...emptySteps(count), readings: 0 };
  let volume: number = given.volume;
  for (let index = 0; index < count; index++) {
    steps.elapsed[index] = index === 0 ? 0 : Math.max(0, (when[index] ?? NaN) - (when[index - 1] ?? NaN));
    const thick = thickness(lost.before[index] ?? NaN, volume);
    if (kind[index] === eventKinds.volume) volume = amount[index] ?? NaN;
    const thickAfter = thickness(lost.after[index] ?? NaN, volume);
    steps.thickBefore[index] = thick;
    steps.thickAfter[index] = thickAfter;
    steps.volume[index] = volume;
    steps.share[index] = 1;
    steps.read[index] = steps.noise[index] = NaN;
    if (kind[index] === eventKinds.volume) steps.share[index] = thick / thickAfter;
    else if (kind[index] === eventKinds.dose)
      steps.added[index] = ((amount[index] ?? NaN) * (given.strength ?? NaN)) / volume;
    else if (kind[index] === eventKinds.change) writeChange(steps, events, index);
    else if (kind[index] === eventKinds.reading && writeReading(steps, given, index)) steps.readings++;
  }
  const { rate, most } = lost;
  return { ...steps, evaporation: { rate, most, missing: lost.after[count - 1] ?? 0 } };
}

function emptySteps(count: number) {
  const column = () => new Float64Array(count);
  return {
    count,
    elapsed: column(),
    share: column(),
    added: column(),
    thickBefore: column(),
    thickAfter: column(),
    volume: column(),
    read: column(),
    noise: column(),
  };
}

type Columns = ReturnType<typeof emptySteps>;

function writeChange(steps: Columns, { amount, detail }: WaterEvents, index: number): void {
  const replacement = detail[index] ?? NaN;
  if (Number.isNaN(replacement)) return;
  const thick = steps.thickBefore[index] ?? NaN;
  const exchanged = Math.min(1, ((amount[index] ?? NaN) * thick) / (steps.volume[index] ?? NaN));
  const left = 1 - exchanged;
  steps.share[index] = left < nothingLeft ? 0 : left;
  steps.added[index] = (exchanged * replacement) / thick;
}

/** Whether the reading says something of the level. */
function writeReading(steps: Columns, { events, accuracy, percent }: Given, index: number): boolean {
  const low = events.amount[index] ?? NaN;
  const high = events.detail[index] ?? NaN;
  if (high === Infinity) return false;
  const middle = (low + high) / 2;
  const spread = (accuracy + percent * middle + (high - low) / 2) / bandSpreads;
  steps.read[index] = middle;
  steps.noise[index] = Math.max(finestSpread, spread) ** 2;
  return true;
}
