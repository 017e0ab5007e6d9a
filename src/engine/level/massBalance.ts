import { eventKinds, type WaterEvents } from '../log/waterEvents.js';
import { copperMilligrams, type CopperMilligrams } from '../units/quantity.js';
import type { FilteredLevels } from './filteredLevels.js';
import type { LevelSteps } from './levelSteps.js';
import type { SmoothedLevels } from './smoothedLevels.js';

/** Where the copper came from and went, from before the first event to after the last. */
export interface MassBalance {
  readonly start: CopperMilligrams;
  readonly dosed: CopperMilligrams;
  /** With replacement water, and taken out with the water that it replaced. */
  readonly broughtIn: CopperMilligrams;
  readonly takenOut: CopperMilligrams;
  /** At the rate of loss. */
  readonly lost: CopperMilligrams;
  /** What the readings show beyond that: above 0 came in, below 0 went. */
  readonly drifted: CopperMilligrams;
  /** What a corrected net volume makes of the copper at the same level. */
  readonly corrected: CopperMilligrams;
  readonly end: CopperMilligrams;
}

/**
 * The copper of the system, as the whole log explains it.
 *
 * end = start + dosed + brought in − taken out − lost + drifted + corrected
 *
 * Each part is summed from event to event from the smoothed levels: lost = (1 − e^(−k·t))·C·V of the level after the
 * event before; drifted is the smoothed disturbance, share·Q ÷ P⁻·(M − m⁻); the others are what the event itself does to
 * the level then.
 *
 * Basis: mass = level of the full system × net volume; the mean of each, not cut at 0.
 * Validity: NaN throughout where the first events take place at a level of which nothing is known, and the log shows it
 *   only later, after a change of all the water.
 * Definition: conservation of mass.
 *
 * @returns mg of copper, as the element
 */
export function massBalance(given: {
  readonly events: WaterEvents;
  readonly steps: LevelSteps;
  readonly filtered: FilteredLevels;
  readonly smoothed: SmoothedLevels;
  readonly volume: number;
}): MassBalance {
  const { events, steps, filtered, smoothed } = given;
  const sums = { dosed: 0, broughtIn: 0, takenOut: 0, lost: 0, drifted: 0, corrected: 0 };
  let level = smoothed.start.mean;
  let volume = given.volume;
  for (let index = 0; index < steps.count; index++) {
    const kept = level * (filtered.decay[index] ?? NaN);
    const drifted = disturbance(given, index);
    sums.lost += (level - kept) * volume;
    sums.drifted += drifted * volume;
    addEvent(sums, { events, steps, index, level: kept + drifted, volume });
    level = smoothed.mean[index] ?? NaN;
    volume = steps.volume[index] ?? NaN;
  }
  return {
    start: copperMilligrams(smoothed.start.mean * given.volume),
    dosed: copperMilligrams(sums.dosed),
    broughtIn: copperMilligrams(sums.broughtIn),
    takenOut: copperMilligrams(sums.takenOut),
    lost: copperMilligrams(sums.lost),
    drifted: copperMilligrams(sums.drifted),
    corrected: copperMilligrams(sums.corrected),
    end: copperMilligrams(level * volume),
  };
}

/** What came or went since the event before beyond doses, changes and loss, just before the event. [mg/L] */
function disturbance(
  {
    steps,
    filtered,
    smoothed,
  }: { readonly steps: LevelSteps; readonly filtered: FilteredLevels; readonly smoothed: SmoothedLevels },
  index: number,
): number {
  const expected = filtered.aheadVariance[index] ?? NaN;
  if (!(expected > 0 && expected < Infinity)) return 0;
  const surprise = (smoothed.mean[index] ?? NaN) - (filtered.ahead[index] ?? NaN);
  return ((steps.share[index] ?? NaN) * (filtered.drifted[index] ?? NaN) * surprise) / expected;
}

interface Happening {
  readonly events: WaterEvents;
  readonly steps: LevelSteps;
  readonly index: number;
  /** Just before the event, of the full system. */
  readonly level: number;
  readonly volume: number;
}

function addEvent(
  sums: { dosed: number; broughtIn: number; takenOut: number; corrected: number },
  { events, steps, index, level, volume }: Happening,
): void {
  const share = steps.share[index] ?? NaN;
  const added = (steps.added[index] ?? NaN) * volume;
  const kind = events.kind[index];
  if (kind === eventKinds.dose) sums.dosed += added;
  if (kind === eventKinds.volume) sums.corrected += level * (share * (steps.volume[index] ?? NaN) - volume);
  if (kind !== eventKinds.change) return;
  if (!Number.isNaN(events.detail[index] ?? NaN)) {
    sums.takenOut += (1 - share) * level * volume;
    sums.broughtIn += added;
    return;
  }
  const thick = steps.thickBefore[index] ?? NaN;
  const exchanged = Math.min(volume, (events.amount[index] ?? NaN) * thick);
  sums.takenOut += exchanged * level;
  sums.broughtIn += exchanged * level;
}
