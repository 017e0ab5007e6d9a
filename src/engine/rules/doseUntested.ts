import { limits } from '../limits/limits.js';
import { eventKinds, type WaterEvents } from '../log/waterEvents.js';
import { hoursPerDay, instantDays, secondDays } from '../units/quantity.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';

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
export const doseUntested: Rule = ({ events }, named) => {
  let tested = NaN;
  let dosed = -1;
  /** The last dose of an earlier day that no test has followed. */
  let untested = -1;
  let first: Finding | null = null;
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
};

function finding(
  events: WaterEvents,
  { index, tested, untested, further }: { index: number; tested: number; untested: number; further: readonly number[] },
): Finding {
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
