import * as limits from '../limits/limits.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { hours, hoursPerDay, millilitres, type Hours, type Millilitres } from '../units/quantity.js';

interface Splitting {
  readonly total: Millilitres;
  /** A whole number from 1. */
  readonly dosesADay: number;
  /** A whole number from 1. */
  readonly days: number;
  readonly hoursBetween?: Hours | undefined;
  readonly smallest: Millilitres;
}

export interface DosePart {
  /** From the first dose. */
  readonly offset: Hours;
  readonly dose: Millilitres;
  readonly running: Millilitres;
}

/**
 * A total in equal doses that a syringe can measure.
 *
 * U = total ÷ smallest, rounded down; running(i) = U·i ÷ n, rounded half up; dose(i) = running(i) − running(i − 1)
 *
 * Basis: whole multiples of the smallest volume the syringe reads; n doses in all.
 * Validity: at least one multiple a dose, and a day's doses within that day.
 * Definition: the total in n steps, none lost to rounding; a day's doses span 12 hours unless hours between are given,
 * each day starts 24 hours after the last.
 *
 * @param splitting.total the whole dose [mL]
 * @param splitting.dosesADay doses in a day [1]
 * @param splitting.days days [1]
 * @param splitting.hoursBetween from one dose of a day to the next [h]
 * @param splitting.smallest smallest volume that can be measured [mL]
 * @returns doses with their times from the first one
 * @example splitDose({ total: millilitres(1), dosesADay: 4, days: 1, smallest: millilitres(0.1) }).value.length // = 4
 */
export function splitDose(splitting: Splitting): Result<readonly DosePart[], Problem> {
  const { total, dosesADay, days, smallest } = splitting;
  const { hoursBetween } = splitting;
  const gaps = dosesADay - 1;
  const span = hoursBetween === undefined ? limits.dosingDay.value : gaps * hoursBetween;
  if (hoursBetween !== undefined && span >= hoursPerDay - timeNoise) {
    return refuse({ code: 'doses-past-a-day', doses: dosesADay, hoursBetween });
  }
  const doses = dosesADay * days;
  const units = wholeUnits(total / smallest);
  if (!Number.isSafeInteger(units)) return refuse({ code: 'answer-too-large' });
  // With a unit for each dose no step is 0; with fewer some step must be.
  if (units < doses) return refuse({ code: 'dose-step-zero', total, doses, smallest });
  const parts = Array.from({ length: doses }, (_, i): DosePart => {
    const before = runningUnits(units, i, doses);
    const running = runningUnits(units, i + 1, doses);
    return {
      offset: hours(Math.floor(i / dosesADay) * hoursPerDay + (span * (i % dosesADay)) / Math.max(1, gaps)),
      dose: measured(running - before, smallest),
      running: measured(running, smallest),
    };
  });
  return ok(parts);
}

const timeNoise = 1e-9;

/** A quotient that is a whole number but for binary noise counts as that number. */
function wholeUnits(quotient: number): number {
  return Math.floor(quotient + Math.max(1e-9, 4 * Number.EPSILON * quotient));
}

/** units·i ÷ n rounded half up; quotient and remainder apart, so that the product stays an exact whole number. */
function runningUnits(units: number, i: number, n: number): number {
  const rest = units % n;
  return ((units - rest) / n) * i + Math.floor((2 * rest * i + n) / (2 * n));
}

function measured(units: number, smallest: Millilitres): Millilitres {
  return millilitres(Number((units * smallest).toPrecision(12)));
}
