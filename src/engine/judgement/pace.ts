import { pacePlan } from '../dose/pacePlan.js';
import { tolerance } from '../fish/tolerance.js';
import * as limits from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import type { Treatment } from '../rules/treatment.js';
import { hoursPerDay, levelTolerance, secondDays } from '../units/quantity.js';
import type { LastTest } from './lastTest.js';

/** What the pace allows at a moment. [mg/L] */
export interface PaceNow {
  /** The rise of a day. */
  readonly ration: number;
  /** Raised in the last 23 hours. */
  readonly raised: number;
  /** Of the ration, not below 0. */
  readonly left: number;
  /** The most one dose raises. */
  readonly single: number;
  /** Back up to here is free; 0: nowhere. */
  readonly held: number;
  readonly urgent: boolean;
  /** Hours from one dose to the next. */
  readonly hoursBetween: number;
}

const windowDays = limits.rationWindow.value / hoursPerDay;

/**
 * What the pace allows now.
 *
 * ration = aim ÷ days of the pace; raised = the largest of last low end − lowest high end of the last 23 h, what was dosed
 * in them, and what was dosed since the last test; single dose = ration ÷ doses a day, at most a quarter of the aim
 *
 * Definition: common practice.
 *
 * @param treatment log and card
 * @param last its last test
 * @param lowered since when levels count as held: the last lowering for the fish [serial day]
 * @returns the ration and what is left of it
 */
export function paceNow(treatment: Treatment, last: LastTest, lowered: number): PaceNow {
  const { card } = treatment;
  const plan = pacePlan(card.pace);
  const urgent = plan.roundTheClock;
  const isNamed = card.pace !== 'gradual' || !hasCautious(card.fish);
  const ration = card.aim / (isNamed ? plan.days : limits.sensitiveDays.value);
  const doses = urgent ? limits.urgentDosesADay.value : limits.dosesADayNow.value;
  const raised = Math.max(
    0,
    last.dosed,
    dosedSince(treatment, treatment.now - windowDays),
    last.low - lowestSince(treatment, treatment.now - windowDays),
  );
  return {
    ration,
    raised,
    left: Math.max(0, ration - raised),
    single: Math.min(ration / doses, limits.mostPerDose.value * card.aim),
    held: levelHeld(treatment, lowered),
    urgent,
    hoursBetween: urgent ? limits.urgentDoseGap.value : limits.doseGap.value,
  };
}

/** What doses raised since a moment. [mg/L] */
function dosedSince({ events, card }: Treatment, from: number): number {
  let raised = 0;
  for (let index = events.count - 1; index >= 0 && (events.when[index] ?? NaN) >= from; index--) {
    if (events.kind[index] === eventKinds.dose)
      raised += ((events.amount[index] ?? 0) * (card.strength ?? 0)) / card.volume;
  }
  return raised;
}

/** The lowest high end of the window; where no test fell into it, of the last one. */
function lowestSince({ events }: Treatment, from: number): number {
  let lowest = Infinity;
  for (let index = events.count - 1; index >= 0; index--) {
    if (events.kind[index] !== eventKinds.reading) continue;
    if ((events.when[index] ?? NaN) < from && lowest !== Infinity) break;
    lowest = Math.min(lowest, events.detail[index] ?? NaN);
    if ((events.when[index] ?? NaN) < from) break;
  }
  return lowest;
}

/** The highest level that two readings at least 12 h apart in the last seven days were both at or above. */
function levelHeld({ readings, now, card }: Treatment, lowered: number): number {
  const from = Math.max(now - limits.heldDays.value, card.arrived ?? -Infinity, lowered);
  let held = 0;
  let first = readings.count;
  while (first > 0 && (readings.when[first - 1] ?? NaN) >= from - secondDays) first--;
  for (let a = first; a < readings.count; a++) {
    for (let b = readings.count - 1; b > a; b--) {
      const apart = (readings.when[b] ?? NaN) - (readings.when[a] ?? NaN);
      if (apart < limits.heldApart.value / hoursPerDay - secondDays) break;
      held = Math.max(held, Math.min(readings.low[a] ?? NaN, readings.low[b] ?? NaN));
    }
  }
  return held > levelTolerance ? held : 0;
}

function hasCautious(fish: readonly string[]): boolean {
  return fish.some((name) => {
    const said = tolerance(name);
    return said?.kind === 'listed' && said.entry.advice === 'caution';
  });
}
