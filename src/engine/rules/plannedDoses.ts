import * as limits from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import { hoursPerDay } from '../units/quantity.js';
import type { Treatment } from './treatment.js';

/** Doses of a plan lie so far apart, give or take the keeper's day; parts of it are equal to a syringe's step. [days] */
const plannedApart = {
  least: limits.plannedGapLeast.value / hoursPerDay,
  most: limits.plannedGapMost.value / hoursPerDay,
};
/** Four doses whose three gaps are the same to this are a plan's at any hour. [days] */
const sameGap = limits.evenGapOff.value / (hoursPerDay * 60);
const closestPlan = limits.evenGapLeast.value / hoursPerDay;

/** One of three equal doses or more in a row with hours between them, or of four at even times. */
export function isPlanned({ events }: Treatment, first: number, second: number): boolean {
  const { when, amount } = events;
  const gap = (from: number, to: number): number => (when[to] ?? NaN) - (when[from] ?? NaN);
  const isEqual = (from: number, to: number): boolean => {
    const [a, b] = [amount[from] ?? NaN, amount[to] ?? NaN];
    return Math.abs(a - b) <= limits.plannedDoseOff.value * Math.max(a, b) + limits.syringeStep.value;
  };
  const isPart = (from: number, to: number): boolean =>
    isEqual(from, to) && gap(from, to) >= plannedApart.least && gap(from, to) <= plannedApart.most;
  const isEven = (from: number, to: number): boolean =>
    isEqual(from, to) && Math.abs(gap(from, to) - gap(first, second)) <= sameGap;
  const before = neighbourDose(events.kind, first, -1);
  const after = neighbourDose(events.kind, second, 1);
  if (isPart(first, second) && (isPart(before, first) || isPart(second, after))) return true;
  if (!isEqual(first, second) || gap(first, second) < closestPlan) return false;
  const earlier = neighbourDose(events.kind, before, -1);
  const later = neighbourDose(events.kind, after, 1);
  const [atBefore, atAfter] = [isEven(before, first), isEven(second, after)];
  return (atBefore && atAfter) || (atBefore && isEven(earlier, before)) || (atAfter && isEven(after, later));
}

/** -1 where there is none. */
function neighbourDose(kind: Uint8Array, from: number, step: 1 | -1): number {
  if (from < 0) return -1;
  for (let index = from + step; index >= 0 && index < kind.length; index += step) {
    if (kind[index] === eventKinds.dose) return index;
  }
  return -1;
}
