import { heldDays, heldFrom } from '../hold/heldFrom.js';
import { isLongEnough } from '../hold/holdEnds.js';
import * as limits from '../limits/limits.js';
import { hoursPerDay, levelTolerance } from '../units/quantity.js';
import { signsAfterArrival } from '../rules/signsAfterArrival.js';
import type { Card } from '../log/card.js';
import type { SignRow, SignStep } from '../rules/signs/signSteps.js';
import type { Treatment } from '../rules/treatment.js';
import { meterAccuracyOf } from '../rules/meterError.js';
import { doseNow } from './doseNow.js';
import { fishAgainstCopper } from './fishAgainstCopper.js';
import type { Task } from './task.js';
import { lastTestOf, testLimitHours, type LastTest } from './lastTestOf.js';

/** A dose is mixed in after this long. Common practice. [days] */
const mixingDays = limits.mixing.value / hoursPerDay;

/**
 * What to do at the treatment's moment. On a level that is too old, or was dosed or changed since, there is one answer:
 * test first.
 *
 * Definition: the last test decides; too old is 12 h while raising, 6 h when that is urgent, 36 h in the hold.
 */
export function doNow(treatment: Treatment): readonly Task[] {
  const mend: readonly Task[] = treatment.log.faults.map(({ row }) => ({ kind: 'mend', row }));
  const last = lastTestOf(treatment);
  const test = testFirst(treatment, last);
  if (test !== null || last === null) return [...mend.slice(0, 1), ...(test === null ? [] : [test])];
  const signs = signsAfterArrival(treatment);
  return [
    ...mend.slice(0, 1),
    ...signTasks(signs, last, treatment),
    ...levelTasks(treatment, last, signs),
    ...holdTasks(treatment, last),
  ];
}

function testFirst(treatment: Treatment, last: LastTest | null): Task | null {
  const { now } = treatment;
  if (last === null) return { kind: 'test', by: now, because: { kind: 'no reading' } };
  if (last.dosedSince !== null) {
    return { kind: 'test', by: Math.max(now, last.dosedSince + mixingDays), because: { kind: 'dosed since' } };
  }
  if (last.changedSince !== null) return { kind: 'test', by: now, because: { kind: 'changed since' } };
  if (isNoOneLevel(last, treatment)) {
    return { kind: 'test', by: now, because: { kind: 'no one level' } };
  }
  const limit = testLimitHours(treatment);
  const hours = (now - last.when) * hoursPerDay;
  return hours > limit + 1 / 3600 ? { kind: 'test', by: now, because: { kind: 'too old', hours, limit } } : null;
}

/** What the last text about the fish asks for. */
function signTasks(signs: readonly SignRow[], last: LastTest, { card }: Treatment): readonly Task[] {
  const step = lastStep(signs);
  switch (step) {
    case 'test first':
      return [{ kind: 'test fish water' }];
    case 'raise slowly':
      // Nothing to raise where nothing was lowered, or where the level is back in the band.
      return last.low < card.band.low - levelTolerance ? [{ kind: step }] : [];
    case 'lower and wait':
    case 'stop copper':
      return [{ kind: step }];
    case 'unread':
    case '':
    case undefined:
      return [];
  }
}

/**
 * A bound or a range on both sides of the low limit, or one in the band without a top: a dose on it might go over the
 * top, and a change might take the level below.
 */
function isNoOneLevel({ low, high }: LastTest, { card: { band } }: Treatment): boolean {
  if (low < band.low - levelTolerance) return high >= band.low;
  return high === Infinity && low <= band.high + levelTolerance && band.high !== Infinity;
}

/** What the last text that was understood asks for. */
function lastStep(signs: readonly SignRow[]): SignStep | undefined {
  const spoken = signs.filter(({ step }) => step !== 'unread' && step !== '');
  return spoken[spoken.length - 1]?.step;
}

/** Dose what is missing, change what is too much. */
function levelTasks(treatment: Treatment, last: LastTest, signs: readonly SignRow[]): readonly Task[] {
  const { card, trace } = treatment;
  const isStopped = signs.some(({ step }) => step === 'stop copper');
  const { band, aim } = card;
  if (last.high > band.high + levelTolerance) {
    return changeNow(last, card);
  }
  if (isStopped || trace.holds.some((hold) => isLongEnough(heldDays(hold, card.arrived ?? undefined), card.days)))
    return [];
  const isLow = last.low < band.low - levelTolerance;
  const isClose = last.low < Math.min(aim, band.low + meterAccuracyOf(card)) - levelTolerance;
  const isIll = signs.length > 0 && ['test first', 'lower and wait'].includes(lastStep(signs) ?? '');
  return !isIll && (isLow || isClose) && last.high < aim ? doseTasks(treatment, last, isLow) : [];
}

/** The dose; none while a fish is there that copper kills, and a word with it for one that is to be kept from it. */
function doseTasks(treatment: Treatment, last: LastTest, isLow: boolean): readonly Task[] {
  const [first] = fishAgainstCopper(treatment);
  if (first?.advice === 'never') return [{ kind: 'no copper', fish: first.fish }];
  const dose = doseNow(treatment, last.high, isLow);
  return first === undefined ? [dose] : [dose, { kind: 'ask first', fish: first.fish }];
}

/** The change that brings the high end down to the aim, but not the low end below the band; none where neither goes. */
function changeNow({ low, high }: LastTest, { aim, band, volume }: Card): readonly Task[] {
  const from = high === Infinity ? low : high;
  const share = Math.min(1 - Math.min(aim, band.high) / from, 1 - band.low / low);
  return share > 0 ? [{ kind: 'change', litres: volume * share, from, to: from * (1 - share) }] : [];
}

function holdTasks({ card, trace, now, terms }: Treatment, last: LastTest): readonly Task[] {
  const enough = trace.holds.find((hold) => isLongEnough(heldDays(hold, terms.arrived), card.days));
  if (enough !== undefined) {
    return [
      {
        kind: 'held enough',
        held: heldDays(enough, terms.arrived),
        since: heldFrom(enough, terms.arrived) + card.days,
      },
    ];
  }
  const nextTest: Task = { kind: 'next test', by: Math.max(now, last.when + usualTestDays), level: last.low };
  const { running } = trace;
  if (running === null) return [nextTest];
  const from = heldFrom(running, terms.arrived);
  const held = Math.max(0, now - from);
  return [nextTest, { kind: 'days left', days: Math.max(0, card.days - held), by: from + card.days, held }];
}

/** Test daily in the hold. Common practice. [days] */
const usualTestDays = limits.usualTest.value / hoursPerDay;
