import * as limits from '../limits/limits.js';
import { instantDays, levelTolerance } from '../units/quantity.js';
import { eventsOfReadings, isStrayReading } from './isStrayReading.js';
import { meterErrorAt } from './meterError.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { levelText, ordinal } from './phrases.js';
import { levelBelowBetweenTests } from './levelBelowBetweenTests.js';

interface AboveBand {
  readonly code: 'above-band';
  readonly level: number;
  readonly top: number;
  /** Percent over the top. */
  readonly over: number;
  readonly reason: Reason | 'top unknown';
}

type Reason = 'once' | 'far' | 'twice' | 'signs';

/**
 * A level above the band: over the top by up to a tenth once is a warning; more, twice running, or with signs is danger.
 * A single reading over it by no more than the meter's error is none where the log as a whole puts the level below the
 * top; a second one running is.
 */
export const aboveBand: Rule<AboveBand> = {
  about: 'a level above the band: once, far over, twice running, or while fish show signs',
  codes: { 'above-band': ['danger', 'warning'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [...levelBelowBetweenTests.yieldsTo, levelBelowBetweenTests],
  find,
  words,
  examples: [
    { log: daily('Cu', 2.25, 2.7, 2.25), finds: ['warning 3 above-band'] },
    { log: daily('Cu', 2.25, 2.7, 2.7, 2.25), finds: ['warning 3 above-band', 'danger 4 above-band'] },
    { log: daily('Cu', 2.25, 2.55, 2.25), finds: [] },
  ],
};

function find(treatment: Treatment, named: ReadonlySet<number>): readonly Found<AboveBand>[] {
  const { readings, card } = treatment;
  const { count, when, low, row, odd } = readings;
  const top = card.band.high;
  if (top === Infinity) return [];
  const found: Found<AboveBand>[] = [];
  const raised = new Set<Reason>();
  let events: Uint32Array | null = null;
  let isAbove = false;
  for (let index = 0; index < count;) {
    const instant = when[index] ?? NaN;
    let highest = index;
    let level = -Infinity;
    for (; index < count && (when[index] ?? NaN) - instant < instantDays; index++) {
      const known = knownHigh(low[index] ?? NaN, odd.size === 0 ? undefined : odd.get(row[index] ?? 0)?.high);
      if (known > level) [level, highest] = [known, index];
    }
    const wasAbove = isAbove;
    isAbove = level > top + levelTolerance && !isStrayReading(treatment, named, highest);
    if (!isAbove) {
      // Clearing makes a new table each time.
      if (raised.size > 0) raised.clear();
      if (odd.size > 0 && odd.get(row[highest] ?? 0)?.high === Infinity)
        found.push(above(treatment, highest, level, 'top unknown'));
      continue;
    }
    events ??= eventsOfReadings(treatment);
    const signs = hasSignBeside(treatment, instant);
    if (!signs && !wasAbove && !isMoreThanError(treatment, level, events[highest] ?? 0)) continue;
    const reason =
      level > top * limits.farOverTop.value + levelTolerance ? 'far' : signs ? 'signs' : wasAbove ? 'twice' : 'once';
    if (raised.has(reason) || (reason === 'once' && raised.size > 0)) continue;
    raised.add(reason);
    found.push(above(treatment, highest, level, reason));
  }
  return found;
}

function words(finding: AboveBand): FindingWords {
  return {
    finding: `${levelText(finding.level)} ${whatNow(finding)}.`,
    why: `A level above the band does not break the hold, it endangers the fish: over a ${part}, twice running or with signs is danger.`,
  };
}

/** A tenth. */
const part = ordinal(Math.round(1 / (limits.farOverTop.value - 1)));

function whatNow({ top, over, reason }: AboveBand): string {
  const by = `is ${over.toFixed(1)} % over the top of ${levelText(top)}`;
  switch (reason) {
    case 'once':
      return `${by}: add no copper, test again today`;
    case 'twice':
      return `${by}, twice running: lower it by a water change, never below the band`;
    case 'far':
      return `${by}: lower it by a water change now, never below the band`;
    case 'signs':
      return `${by} while fish show signs: test ammonia and oxygen too, and lower it by a water change`;
    case 'top unknown':
      return `or more is read, and the top is ${levelText(top)}: dilute the sample and test again`;
  }
}

/** The high end, or of a reading without one the low end. */
function knownHigh(low: number, high: number | undefined): number {
  return high === undefined || high === Infinity ? low : high;
}

function isMoreThanError({ card, levels }: Treatment, level: number, event: number): boolean {
  return (
    level - card.band.high > meterErrorAt(card, level) + levelTolerance ||
    (levels?.expected[event] ?? 0) > card.band.high
  );
}

function hasSignBeside({ signs }: Treatment, when: number): boolean {
  let first = 0;
  let after = signs.length;
  while (first < after) {
    const middle = (first + after) >>> 1;
    if ((signs[middle]?.when ?? NaN) < when - limits.signBeside.value) first = middle + 1;
    else after = middle;
  }
  for (; (signs[first]?.when ?? Infinity) <= when + limits.signBeside.value; first++) {
    if (signs[first]?.reading === 'sign') return true;
  }
  return false;
}

function above(
  { readings, card }: Treatment,
  index: number,
  level: number,
  reason: Reason | 'top unknown',
): Found<AboveBand> {
  const top = card.band.high;
  return {
    code: 'above-band',
    severity: reason === 'once' || reason === 'top unknown' ? 'warning' : 'danger',
    when: readings.when[index] ?? NaN,
    row: readings.row[index] ?? 0,
    source: 'Practice',
    level,
    top,
    over: (level / top - 1) * 100,
    reason,
  };
}
