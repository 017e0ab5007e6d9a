import * as limits from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import { hoursPerDay, instantDays, secondDays } from '../units/quantity.js';
import { isPlanned } from './plannedDoses.js';
import { carriedShare } from './steady/carriedShare.js';
import { nextReading } from './steady/nextReading.js';
import { steadyLevels } from './steady/steadyLevels.js';
import type { Treatment } from './treatment.js';
import type { Rule, Found, FindingWords } from './rule.js';
import { nearLevelText, millilitresText, rounded } from './phrases.js';

interface DoubleDose {
  readonly code: 'double-dose';
  readonly first: { readonly row: number; readonly dose: number };
  readonly dose: number;
  readonly hours: number;
  /** What the next reading says. */
  readonly verdict: 'dosed twice' | 'written twice' | 'cannot tell' | 'no reading';
  /** The next reading and what it should be with the later dose and without; null: none, or no model. */
  readonly next: {
    readonly row: number;
    readonly level: number;
    readonly withBoth: number;
    readonly withOne: number;
  } | null;
}

/** [days] */
const closeTogether = limits.doubleDose.value / hoursPerDay - secondDays;
/**
 * Two doses within 3 hours with no test between them.
 *
 * Definition: whether it was dosed or written twice is seen from which of the two levels lies nearer to the next reading. Three or more
 * equal doses two and a half hours or more apart, or four at even times, are a plan's parts, and not raised; nor are rows
 * with a date alone, which do not say how far apart they are.
 */
export const doubleDose: Rule<DoubleDose> = {
  about: `two doses within ${limits.doubleDose.value} hours with no test between them`,
  codes: { 'double-dose': ['danger'] },
  sources: ['Practice'],
  needs: [['dose']],
  yieldsTo: [],
  find,
  words,
  examples: [
    {
      log: 'When|Cu|dose\n2026-03-08 08:00|2.2|4\n2026-03-08 09:00||4\n2026-03-09 08:00|2.59|',
      finds: ['danger 3 double-dose'],
    },
    { log: 'When|Cu|dose\n2026-03-08 08:00|2|4\n2026-03-08 11:00||4\n2026-03-09 08:00|2.4|', finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<DoubleDose>[] {
  const { events } = treatment;
  const found: Found<DoubleDose>[] = [];
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
        ...shownByNext(treatment, index),
      });
    }
    previous = index;
  }
  return found;
}

function words({ first, dose, hours, verdict, next }: DoubleDose): FindingWords {
  return {
    finding:
      `${millilitresText(dose)} ${hours < 1 / 30 ? 'at the time of' : `${rounded(hours, 1)} h after`} ` +
      `${millilitresText(first.dose)} in row ${first.row} with no test between: ${whatNext(verdict, next)}.`,
    why: `Two doses within ${limits.doubleDose.value} hours and no test between are one dose given twice or one entry written twice.`,
  };
}

function whatNext(verdict: DoubleDose['verdict'], next: DoubleDose['next']): string {
  const reading = next === null ? '' : `the next reading, ${nearLevelText(next.level)} in row ${next.row},`;
  const both = next === null ? '' : rounded(next.withBoth);
  const one = next === null ? '' : rounded(next.withOne);
  switch (verdict) {
    case 'dosed twice':
      return `${reading} fits both doses given (${both}) and not one (${one})`;
    case 'written twice':
      return `${reading} fits one dose (${one}) and not both (${both}), so it is likely written twice; strike one out`;
    case 'cannot tell':
      return `${reading} fits two doses (${both}) as well as one (${one})`;
    case 'no reading':
      return 'test now, and dose nothing before';
  }
}

function isTwo(treatment: Treatment, first: number, second: number): boolean {
  if (isPlanned(treatment, first, second) || isUnreadBetween(treatment, first, second)) return false;
  return !isDateOnly(treatment, first) && !isDateOnly(treatment, second);
}

/** A test between the two that cannot be read was a test all the same. */
function isUnreadBetween({ log, events }: Treatment, first: number, second: number): boolean {
  const [from, to] = [events.when[first] ?? NaN, events.when[second] ?? NaN];
  return log.faults.some(({ kind, when }) => kind === 'copper' && when - from >= instantDays && when <= to);
}

/** Whether the entry of a row has no time of day. */
function isDateOnly({ log, events }: Treatment, index: number): boolean {
  return log.dateOnly[log.row.indexOf(events.row[index] ?? 0)] === 1;
}

function shownByNext(treatment: Treatment, dose: number): Pick<DoubleDose, 'verdict' | 'next'> {
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
