import { lowestBetweenReadings, type LowestBetween } from '../level/lowestBetweenReadings.js';
import * as limits from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import { secondDays } from '../units/quantity.js';
import { bandSpreads } from '../level/levelSteps.js';
import { countedHolds } from './countedHolds.js';
import type { Treatment } from './treatment.js';
import { meterAccuracyOf } from './meterError.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { levelText } from './phrases.js';
import { holdBroken } from './holdBroken.js';
import { unexplainedReading } from './unexplainedReading.js';

interface LevelBelow {
  readonly code: 'level-below-between';
  readonly low: number;
  readonly expected: number;
  /** Upper end of the 95 % band. */
  readonly high: number;
  readonly fromRow: number;
  readonly toRow: number;
}

/**
 * The level fell below the band between two tests that did not show it: danger where the upper end of its 95 % band is
 * below the low limit, else a warning where the level expected is. Only a dip counts, under the levels at both tests by
 * more than half a standard deviation of the meter: what a test itself shows is not said again, and noise makes no dip.
 */
export const levelBelowBetweenTests: Rule<LevelBelow> = {
  about: 'a level that fell below the band between two tests that do not show it',
  codes: { 'level-below-between': ['danger', 'warning'] },
  sources: ['Practice'],
  needs: [['copper'], ['change', 'dose']],
  yieldsTo: [...unexplainedReading.yieldsTo, holdBroken],
  find,
  words,
  examples: [
    {
      log: `When|Cu|dose|WC L
2026-03-01 08:00|2.25||
2026-03-02 08:00|2.25||
2026-03-02 12:00||18|80
2026-03-03 08:00|2.25||`,
      finds: ['danger 4 level-below-between'],
    },
    { log: daily('Cu|dose', '2.25|', '2.2|1', '2.25|', '2.24|'), finds: [] },
  ],
};

function find(treatment: Treatment, named: ReadonlySet<number>): readonly Found<LevelBelow>[] {
  const { events, levels, card } = treatment;
  if (levels === null) return [];
  const { low } = card.band;
  const lowest = lowestBetweenReadings(events, levels);
  const leastDip = (limits.dipOfError.value * (meterAccuracyOf(card) + card.meterPercent * low)) / bandSpreads;
  const found: Found<LevelBelow>[] = [];
  for (const { hold, from, reached } of countedHolds(treatment)) {
    for (let interval = hold.firstIndex; interval < hold.lastIndex; interval++) {
      const expected = lowest.expected[interval] ?? NaN;
      if (!(expected < low || (lowest.high[interval] ?? NaN) < low)) continue;
      const first = lowest.from[interval] ?? 0;
      const last = lowest.to[interval] ?? 0;
      if ((events.when[last] ?? NaN) <= from || (events.when[first] ?? NaN) >= reached - secondDays) continue;
      const atTests = Math.min(levels.expected[first] ?? NaN, levels.expected[last] ?? NaN);
      if (!(atTests - expected > leastDip) || isNamed(treatment, named, first, last)) continue;
      found.push(below(treatment, lowest, interval));
    }
  }
  return found;
}

function words({ low, expected, high, fromRow, toRow }: LevelBelow): FindingWords {
  return {
    finding:
      `Between the tests in rows ${fromRow} and ${toRow} the level fell to about ${levelText(expected)}, with 95 % ` +
      `${high < low ? `below ${levelText(high)}` : `up to ${levelText(high)}`}, against a low limit of ${levelText(low)}: ` +
      `test after every change and before the dose that makes up for it.`,
    why: 'Doses, changes and loss by mass balance show what two tests in the band leave out.',
  };
}

/** A change of water between the two tests, or the later test, is already named. */
function isNamed({ events }: Treatment, named: ReadonlySet<number>, first: number, last: number): boolean {
  if (named.size === 0) return false;
  for (let index = first; index <= last; index++) {
    const kind = events.kind[index];
    if ((kind === eventKinds.change || index === last) && named.has(events.row[index] ?? 0)) return true;
  }
  return false;
}

function below({ events, card }: Treatment, lowest: LowestBetween, interval: number): Found<LevelBelow> {
  const high = lowest.high[interval] ?? NaN;
  return {
    code: 'level-below-between',
    severity: high < card.band.low ? 'danger' : 'warning',
    when: lowest.highWhen[interval] ?? NaN,
    row: events.row[lowest.highEvent[interval] ?? 0] ?? 0,
    source: 'Practice',
    low: card.band.low,
    expected: lowest.expected[interval] ?? NaN,
    high,
    fromRow: events.row[lowest.from[interval] ?? 0] ?? 0,
    toRow: events.row[lowest.to[interval] ?? 0] ?? 0,
  };
}
