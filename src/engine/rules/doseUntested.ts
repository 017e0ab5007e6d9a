import * as limits from '../limits/limits.js';
import { eventKinds, type WaterEvents } from '../log/waterEvents.js';
import { hoursPerDay, instantDays, secondDays } from '../units/quantity.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { millilitresText, rounded, furtherRows } from './phrases.js';
import type { Treatment } from './treatment.js';
import { copperInTopOff } from './copperInTopOff.js';

interface DoseUntested {
  readonly code: 'dose-untested';
  readonly dose: number;
  /** Since the last test; null: there is none before. */
  readonly hours: number | null;
  /** An earlier dose that no test followed; null: only the test is old. */
  readonly after: { readonly row: number; readonly hours: number } | null;
  readonly further: readonly number[];
}

/** A plan tests before each day's first dose: an older test than this is none for the dose. [days] */
const oldTest = limits.doseTestAge.value / hoursPerDay;
/** Doses further apart than this are not of one day. [days] */
const sameDay = limits.doseDayGap.value / hoursPerDay;

/**
 * A dose on an untested level: no test since a dose of an earlier day, or none in the day before.
 *
 * Basis: a plan's doses of one day are given on the test before the first of them.
 * Definition: the last test before the dose is more than 25 hours old, or it is older than a dose from which a gap of
 * more than 8 hours parts this one. What comes before the first test is not judged. One finding a log, at the first such
 * dose.
 */
export const doseUntested: Rule<DoseUntested> = {
  about: 'a dose on an untested level',
  codes: { 'dose-untested': ['warning'] },
  sources: ['Practice'],
  needs: [['dose']],
  yieldsTo: [...copperInTopOff.yieldsTo, copperInTopOff],
  find,
  words,
  examples: [
    { log: daily('Cu|dose', '1.1|4', '|4', '1.5|'), finds: ['warning 3 dose-untested'] },
    { log: daily('Cu|dose', '1.1|4', '1.3|4', '1.5|'), finds: [] },
  ],
};

function find({ events }: Treatment, named: ReadonlySet<number>): readonly Found<DoseUntested>[] {
  let tested = NaN;
  let dosed = -1;
  /** The last dose of an earlier day that no test has followed. */
  let untested = -1;
  let first: Found<DoseUntested> | null = null;
  const further: number[] = [];
  for (let index = 0; index < events.count; index++) {
    const when = events.when[index] ?? NaN;
    if (events.kind[index] === eventKinds.reading) {
      tested = when;
      dosed = untested = -1;
    }
    if (events.kind[index] !== eventKinds.dose) continue;
    if (dosed >= 0 && when - (events.when[dosed] ?? NaN) > sameDay) untested = dosed;
    const row = events.row[index] ?? 0;
    const isOld = untested >= 0 || when - tested > oldTest + secondDays;
    if (isOld && !named.has(row) && !isTestedThen(events, index)) {
      if (first !== null) further.push(row);
      else first = finding(events, { index, tested, untested, further });
    }
    dosed = index;
  }
  return first === null ? [] : [first];
}

function words({ dose, hours, after, further }: DoseUntested): FindingWords {
  return {
    finding: `${millilitresText(dose)} dosed ${howLong(hours, after)}${furtherRows(further)}: test first, then dose.`,
    why: "Never dose on an untested level; a plan tests before each day's first dose.",
  };
}

function howLong(hours: number | null, after: DoseUntested['after']): string {
  if (after !== null) return `with no test since the dose of row ${after.row}, ${rounded(after.hours, 0)} h before`;
  return `with no test ${hours === null ? 'before it' : `for ${rounded(hours, 0)} h`}`;
}

function finding(
  events: WaterEvents,
  { index, tested, untested, further }: { index: number; tested: number; untested: number; further: readonly number[] },
): Found<DoseUntested> {
  const when = events.when[index] ?? NaN;
  const hoursSince = (earlier: number): number => (when - earlier) * hoursPerDay;
  return {
    severity: 'warning',
    when,
    row: events.row[index] ?? 0,
    source: 'Practice',
    code: 'dose-untested',
    dose: events.amount[index] ?? NaN,
    hours: tested === tested ? hoursSince(tested) : null,
    after: untested < 0 ? null : { row: events.row[untested] ?? 0, hours: hoursSince(events.when[untested] ?? NaN) },
    further,
  };
}

/** A reading of the same moment in a later row. */
function isTestedThen({ count, kind, when }: WaterEvents, dose: number): boolean {
  for (let at = dose + 1; at < count && (when[at] ?? NaN) - (when[dose] ?? NaN) < instantDays; at++) {
    if (kind[at] === eventKinds.reading) return true;
  }
  return false;
}
