import { limits } from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import { hoursPerDay, instantDays, secondDays } from '../units/quantity.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';
import type { SlipFinding } from './slipFinding.js';
import { carriedShare } from './steady/carriedShare.js';
import { nextReading } from './steady/nextReading.js';
import { steadyLevels } from './steady/steadyLevels.js';
import type { Treatment } from './treatment.js';

/** [days] */
const closeTogether = limits.doubleDose.value / hoursPerDay - secondDays;
/** Doses of a plan lie so far apart, give or take the keeper's day; parts of it are equal to a syringe's step. [days] */
const plannedApart = {
  least: limits.plannedGapLeast.value / hoursPerDay,
  most: limits.plannedGapMost.value / hoursPerDay,
};
/** Four doses whose three gaps are the same to this are a plan's at any hour. [days] */
const sameGap = limits.evenGapOff.value / (hoursPerDay * 60);
const closestPlan = limits.evenGapLeast.value / hoursPerDay;

/**
 * Two doses within 3 hours with no test between them.
 *
 * Definition: dosed or written twice is told by which of the two levels lies nearer to the next reading. Three or more
 * equal doses two and a half hours or more apart, or four at even times, are a plan's parts, and not raised; nor are rows
 * with a date alone, which do not say how far apart they are.
 */
export const doubleDose: Rule = (treatment) => {
  const { events } = treatment;
  const found: Finding[] = [];
  let previous = -1;
  for (let index = 0; index < events.count; index++) {
    const when = events.when[index] ?? NaN;
    // A reading of the very moment of a dose is no test of it.
    const isLater = !(when - (events.when[previous] ?? NaN) < instantDays);
    if (events.kind[index] === eventKinds.reading && isLater) previous = -1;
    if (events.kind[index] !== eventKinds.dose) continue;
    const days = when - (events.when[previous] ?? NaN);
    if (previous >= 0 && days < closeTogether && isTwo(treatment, previous, index)) {
      found.push({
        severity: 'danger',
        when,
        row: events.row[index] ?? 0,
        source: 'Practice',
        code: 'double-dose',
        first: { row: events.row[previous] ?? 0, dose: events.amount[previous] ?? NaN },
        dose: events.amount[index] ?? NaN,
        hours: days * hoursPerDay,
        ...toldByNext(treatment, index),
      });
    }
    previous = index;
  }
  return found;
};

function isTwo(treatment: Treatment, first: number, second: number): boolean {
  if (isPlanned(treatment, first, second) || isUnreadBetween(treatment, first, second)) return false;
  return !isDateOnly(treatment, first) && !isDateOnly(treatment, second);
}

/** A test between the two that cannot be read was a test all the same. */
function isUnreadBetween({ log, events }: Treatment, first: number, second: number): boolean {
  const [from, to] = [events.when[first] ?? NaN, events.when[second] ?? NaN];
  return log.faults.some(({ kind, when }) => kind === 'copper' && when - from >= instantDays && when <= to);
}

/** One of three equal doses or more in a row with hours between them, or of four at even times. */
function isPlanned({ events }: Treatment, first: number, second: number): boolean {
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

/** Whether the entry of a row has no time of day. */
function isDateOnly({ log, events }: Treatment, index: number): boolean {
  return log.dateOnly[log.row.indexOf(events.row[index] ?? 0)] === 1;
}

/** -1 where there is none. */
function neighbourDose(kind: Uint8Array, from: number, step: 1 | -1): number {
  if (from < 0) return -1;
  for (let index = from + step; index >= 0 && index < kind.length; index += step) {
    if (kind[index] === eventKinds.dose) return index;
  }
  return -1;
}

function toldByNext(
  treatment: Treatment,
  dose: number,
): Pick<Extract<SlipFinding, { code: 'double-dose' }>, 'verdict' | 'next'> {
  const { events, levels } = treatment;
  const steady = steadyLevels(treatment);
  const next = nextReading(events, dose);
  if (next < 0 || levels === null || steady === null) return { verdict: 'no reading', next: null };
  const { steps } = levels.path;
  const withBoth = steady.predicted[next] ?? NaN;
  const withOne = withBoth - (steps.added[dose] ?? NaN) * carriedShare(steps, steady.rate, dose, next);
  const level = events.amount[next] ?? NaN;
  const spread = steady.spread[next] ?? NaN;
  if (!(spread > 0)) return { verdict: 'no reading', next: null };
  const better = Math.abs(level - withOne) - Math.abs(level - withBoth);
  const verdict =
    withBoth - withOne < limits.twiceApart.value * spread
      ? 'cannot tell'
      : better > 0
        ? 'dosed twice'
        : 'written twice';
  return { verdict, next: { row: events.row[next] ?? 0, level, withBoth, withOne } };
}
