import { copperForms } from '../dose/forms.js';
import { pacePlan } from '../dose/pacePlan.js';
import * as limits from '../limits/limits.js';
import { hoursPerDay, secondDays, serialDay } from '../units/quantity.js';
import { decidingDose } from './decidingDose.js';
import { medicineSteps } from './medicineSteps.js';
import { observationEnd } from './observationEnd.js';
import type { PlanAction, PlanStep, PlanTerms } from './planStep.js';
import { secondBathWindow } from './secondBathWindow.js';
import { testsNeeded } from './testsNeeded.js';

/** The times on which the steps of a plan hang. */
interface Course {
  readonly prepare: number;
  readonly start: number;
  readonly holdStart: number;
  readonly holdEnd: number;
}

type Add = (when: number, action: PlanAction) => void;

/** The earliest day a sheet knows. */
const firstSerial = 1;
const transferDays = limits.transferDays.value;
const fallowDays = limits.fallowDays.value;
/** Copper tests after the last change. [h] */
const testsAfter = [limits.firstTestOut.value, limits.secondTestOut.value] as const;

/**
 * A copper quarantine from the day before the first dose to the end of observation, in time order.
 *
 * hold starts = start + days of raising; it ends `days` later; copper is out, and observation begins, at its end.
 *
 * Basis: days of 24 hours; the hold day is the days since the hold began, rounded down, plus 1.
 * Validity: a plan, not a record: the hold begins with a reading inside the band, and later dates move with it.
 * Differs from the source: nothing.
 * Source: [Practice, the hold, what comes before and after]; [ZecHadfieldHungerford2021, abstract] for the short course.
 *
 * @param terms first dose, form, days of hold, pace of raising, other medicines
 * @returns steps in time order
 * @example plan({ start: serialDay(46082), form: 'chelated', days: days(30), pace: 'gradual', medicines: [] }).find((step) => step.code === 'finish').when // = 46116
 */
export function plan(terms: PlanTerms): readonly PlanStep[] {
  const { start } = terms;
  const holdStart = start + pacePlan(terms.pace).days;
  const course: Course = {
    prepare: Math.max(firstSerial, start - 1),
    start,
    holdStart,
    holdEnd: holdStart + terms.days,
  };
  const steps: PlanStep[] = [];
  const add: Add = (when, action) => {
    steps.push({ ...action, when: serialDay(when), holdDay: holdDayOf(action, when, course) });
  };
  const medicines = medicineSteps(terms.medicines, { ...course, secondBath: secondBathWindow() });
  addPreparation(terms, course, add);
  addRaising(terms, course, add);
  addHold(terms, course, add);
  addAfter(terms, course, medicines.lastBath, add);
  for (const { when, action } of medicines.steps) add(when, action);
  return steps.sort((a, b) => a.when - b.when);
}

/** Copper is out of the hold at the instant the hold ends; the last day's own steps still belong to it. */
function holdDayOf({ code }: PlanAction, when: number, { holdStart, holdEnd }: Course): number | null {
  if (code === 'copper-out' || when < holdStart || when > holdEnd) return null;
  return Math.floor(when - holdStart + secondDays) + 1;
}

function addPreparation({ form, days, pace }: PlanTerms, { prepare }: Course, add: Add): void {
  const { aim, usualLossPerDay } = copperForms[form];
  const testsADay = pace === 'urgent' ? limits.testsADayUrgent.value : limits.testsADayRaising.value;
  const tests = testsNeeded({ raisingDays: pacePlan(pace).days, testsADayRaising: testsADay, holdDays: days });
  add(prepare, { code: 'screen' });
  add(prepare, { code: 'measure' });
  add(prepare, { code: 'baseline' });
  add(prepare, { code: 'supplies', pace, tests, testsAfter: testsAfter.length, aim, lossPerDay: usualLossPerDay });
  add(prepare, { code: 'handle' });
  add(prepare, { code: 'keep-out' });
  if (days < limits.shortCourse.value) add(prepare, { code: 'short-course', days });
}

function addRaising(terms: PlanTerms, { start, holdStart }: Course, add: Add): void {
  const { form, pace } = terms;
  const { aim } = copperForms[form];
  const deciding = decidingDose(terms);
  add(start, { code: 'raise', pace, days: holdStart - start, aim });
  add(start, { code: 'test-raising', pace });
  add(deciding.at + limits.mixing.value / hoursPerDay, { code: 'test-decides', level: deciding.levelAfter });
}

function addHold({ form, days }: PlanTerms, { holdStart, holdEnd }: Course, add: Add): void {
  const { aim, band } = copperForms[form];
  add(holdStart, { code: 'hold-begins', low: band.low, aim });
  add(holdStart, { code: 'test-holding', low: band.low, aim });
  if (days >= transferDays) {
    add(holdStart + transferDays - limits.quietDays.value, { code: 'watch' });
    add(holdStart + transferDays - 1, { code: 'prepare-observation' });
    add(holdStart + transferDays, { code: 'transfer' });
  }
  if (days > 1) add(holdEnd - 1, { code: 'prepare-removal' });
  add(holdEnd, { code: 'finish', days, low: band.low });
}

function addAfter({ form, start }: PlanTerms, { holdEnd }: Course, lastBath: number | null, add: Add): void {
  add(holdEnd, { code: 'copper-out' });
  for (const hours of testsAfter) add(holdEnd + hours / hoursPerDay, { code: 'test-after-change', hours });
  add(holdEnd + testsAfter[0] / hoursPerDay, { code: 'sentinel' });
  const afterPraziquantel = lastBath !== null && lastBath > holdEnd;
  const { earliest, advised } = observationEnd({ ended: serialDay(afterPraziquantel ? lastBath : holdEnd), form });
  add(earliest, { code: 'observe-earliest', form, days: limits.observeEarliest.value, afterPraziquantel });
  add(advised, { code: 'observe-advised', form, days: limits.observeAdvised.value, afterPraziquantel });
  add(start + fallowDays, { code: 'display-fallow', days: fallowDays });
}
