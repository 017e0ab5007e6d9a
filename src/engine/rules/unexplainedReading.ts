import { bandSpreads } from '../level/levelSteps.js';
import { eventKinds } from '../log/waterEvents.js';
import { steadyLevels } from './steady/steadyLevels.js';
import { fates } from './steady/steadyPass.js';
import type { Treatment } from './treatment.js';
import { wrongForm } from './wrongForm.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { nearLevelText, rounded, furtherRows } from './phrases.js';
import { doseUntested } from './doseUntested.js';
import { foundBy } from './foundBy.js';
import { stoppedShort } from './stoppedShort.js';

interface UnexplainedReading {
  readonly code: 'unexplained-reading';
  readonly written: number;
  readonly expected: number;
  readonly low: number;
  readonly high: number;
  /** The readings after it agree with it, or with the ones before it. */
  readonly then: 'stays' | 'goes back' | 'last';
  /** Further readings of the log that the model cannot explain. */
  readonly further: readonly number[];
}

/** Every cause that explains a reading stands in one of its row or of a row since the reading before. */
function isExplained({ events }: Treatment, index: number, named: ReadonlySet<number>): boolean {
  if (named.has(events.row[index] ?? 0)) return true;
  for (let at = index - 1; at >= 0; at--) {
    if (named.has(events.row[at] ?? 0)) return true;
    if (events.kind[at] === eventKinds.reading) return false;
  }
  return false;
}

/**
 * A reading that doses, changes, loss and the meter's error do not explain, and for which no cause is named yet.
 *
 * Definition: it lies outside the gate of `steadyPass`; in a log without doses only from the first reading in the band
 * on, and only where the next reading goes back. One finding a log, at the first such reading.
 */
export const unexplainedReading: Rule<UnexplainedReading> = {
  about: 'a reading that nothing in the log explains',
  codes: { 'unexplained-reading': ['warning'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [...doseUntested.yieldsTo, doseUntested, stoppedShort],
  find,
  words,
  examples: [
    { log: daily('Cu', 2.25, 2.25, 1.6, 2.25, 2.25), finds: ['warning 4 unexplained-reading'] },
    { log: daily('Cu', 2.25, 2.25, 2.2, 2.25, 2.25), finds: [] },
  ],
};

function find(treatment: Treatment, named: ReadonlySet<number>): readonly Found<UnexplainedReading>[] {
  const steady = steadyLevels(treatment);
  if (steady === null || steady.allFit) return [];
  // Of another form's readings none is explained, and one finding has said so.
  if (foundBy(wrongForm, treatment).length > 0) return [];
  const { events } = treatment;
  const unexplained: number[] = [];
  // Without doses in the log the level rises by those that are not in it.
  const hasDoses = events.kind.includes(eventKinds.dose);
  for (let index = hasDoses ? 0 : firstHeld(treatment); index < events.count; index++) {
    const fate = steady.fate[index] ?? fates.none;
    const isOff = hasDoses ? fate > fates.fits : fate === fates.stray;
    if (isOff && !isExplained(treatment, index, named)) unexplained.push(index);
  }
  const first = unexplained[0];
  if (first === undefined) return [];
  const expected = steady.predicted[first] ?? NaN;
  const half = bandSpreads * (steady.spread[first] ?? NaN);
  const fate = steady.fate[first];
  return [
    {
      severity: 'warning',
      when: events.when[first] ?? NaN,
      row: events.row[first] ?? 0,
      source: 'Practice',
      code: 'unexplained-reading',
      written: events.amount[first] ?? NaN,
      expected,
      low: Math.max(0, expected - half),
      high: expected + half,
      then: fate === fates.stray ? 'goes back' : fate === fates.jump ? 'stays' : 'last',
      further: unexplained.slice(1).map((index) => events.row[index] ?? 0),
    },
  ];
}

function words({ written, expected, low, high, then, further }: UnexplainedReading): FindingWords {
  return {
    finding:
      `${nearLevelText(written)} where doses, changes and loss lead to ${nearLevelText(expected)} (${rounded(low, 3)} to ` +
      `${rounded(high, 3)}); ${afterwards[then]}${furtherRows(further)}.`,
    why: 'A reading far outside what the log explains means a wrong test, or something that was not written down.',
  };
}

const afterwards: Readonly<Record<UnexplainedReading['then'], string>> = {
  stays: 'the next reading agrees with it, so look for a dose, a change or a volume that is not in the log',
  'goes back': 'the next readings agree with the ones before it, so look for a bad test',
  last: 'test again before anything is dosed',
};

/** The event of the first reading at or above the low limit, the number of events where there is none. */
function firstHeld({ events, card }: Treatment): number {
  const { low } = card.band;
  let index = 0;
  while (index < events.count && (events.kind[index] !== eventKinds.reading || (events.amount[index] ?? NaN) < low))
    index++;
  return index;
}
