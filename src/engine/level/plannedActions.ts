import { ramp } from '../dose/ramp.js';
import type { Problem } from '../result/problem.js';
import { ok, type Result } from '../result/result.js';
import { copperMgPerLitre, hoursPerDay, millilitres, serialDay, type CopperMgPerLitre } from '../units/quantity.js';
import type { SeededNumbers } from './seededNumbers.js';
import type { SimulatedTreatment } from './simulatedTreatment.js';

/** What a keeper is about to do. A correction is planned only when its test is read. */
export type PlannedAction =
  | { readonly kind: 'reading'; readonly when: number; readonly isHolding: boolean }
  | { readonly kind: 'dose'; readonly when: number; readonly amount: number }
  | { readonly kind: 'change' | 'topOff'; readonly when: number };

/** Hours after the day's first test. [Practice: top off, mix, then change] */
const topOffAt = 1.5;
const changeAt = 2;
const firstDoseAt = 1;
/** Tests of one day lie in so many hours. */
const wakingHours = 12;
/** Smallest dose that a syringe measures. [mL] */
const smallestDose = 0.1;

/**
 * The acts of a whole treatment in time order: a first test, doses up to the aim, tests, top-offs and changes.
 *
 * Definition: a keeper's timetable.
 *
 * @param treatment to be simulated
 * @param aim level to keep [mg/L]
 * @param draws moves each test but the first
 * @returns acts, times rounded to the minute [serial day]
 */
export function plannedActions(
  treatment: SimulatedTreatment,
  aim: CopperMgPerLitre,
  draws: SeededNumbers,
): Result<PlannedAction[], Problem> {
  const { start, volume, strength, raisingDays, change, days } = treatment;
  const doses = ramp({
    volume,
    level: copperMgPerLitre(0),
    wanted: aim,
    strength,
    start: serialDay(start + firstDoseAt / hoursPerDay),
    pace: raisingDays,
    smallest: millilitres(smallestDose),
  });
  if (!doses.ok) return doses;
  const acts: PlannedAction[] = doses.value.map(({ at, dose }) => ({ kind: 'dose', when: at, amount: dose }));
  for (let day = 0; day < days; day++) {
    const isHolding = day >= raisingDays;
    acts.push(...testsOfDay(treatment, day, isHolding, draws));
    if (day > 0 && treatment.topOffPerDay > 0)
      acts.push({ kind: 'topOff', when: start + day + topOffAt / hoursPerDay });
    const isChangeDay = change !== null && isHolding && (day - raisingDays + 1) % change.everyDays === 0;
    if (isChangeDay) acts.push({ kind: 'change', when: start + day + changeAt / hoursPerDay });
  }
  return ok(acts.map((act) => ({ ...act, when: toTheMinute(act.when) })).sort((a, b) => a.when - b.when));
}

function testsOfDay(
  { start, testsADay, testJitter }: SimulatedTreatment,
  day: number,
  isHolding: boolean,
  draws: SeededNumbers,
): PlannedAction[] {
  const tests = isHolding ? testsADay.holding : testsADay.raising;
  return Array.from({ length: tests }, (_, test) => {
    const moved = day === 0 && test === 0 ? 0 : testJitter * (2 * draws.uniform() - 1);
    const hours = tests === 1 ? 0 : (test * wakingHours) / (tests - 1);
    return { kind: 'reading', when: Math.max(start, start + day + (hours + moved) / hoursPerDay), isHolding };
  });
}

/** As people write times. */
export function toTheMinute(when: number): number {
  const minutes = hoursPerDay * 60;
  return Math.round(when * minutes) / minutes;
}
