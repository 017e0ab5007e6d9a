import * as limits from '../limits/limits.js';
import { hoursPerDay, secondDays } from '../units/quantity.js';
import { countedHolds, type CountedHold, holdAt } from './countedHolds.js';
import { fishTexts, type FishText } from './fishTexts.js';
import { stoppedHold } from './stoppedHold.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { daysText, cut } from './phrases.js';
import { shownNumber } from '../units/shown.js';

type Moved =
  | { readonly code: 'moved-early'; readonly days: number; readonly fewest: number; readonly fish: string }
  | {
      readonly code: 'moved-against-terms';
      readonly days: number;
      readonly wanted: number;
      /** The longest stretch without a test where it is too long; null: none is. */
      readonly untested: number | null;
      /** A sign in the last days; null: none. [days before] */
      readonly signs: number | null;
    };

const longestUntested = limits.transferGap.value / hoursPerDay;

/**
 * Fish moved before 14 days of an unbroken hold: danger. Later, but before the hold was long enough, a warning where a
 * stretch of over 48 h was untested or the last seven days were not without signs.
 */
export const movedEarly: Rule<Moved> = {
  about: `fish moved before ${limits.transferDays.value} days of the hold, or later against the terms of a move`,
  codes: { 'moved-early': ['danger'], 'moved-against-terms': ['warning'] },
  sources: ['Practice'],
  needs: [['fish out', 'note']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|fish out', 2.25, 2.25, 2.25, '2.25|1 firefish'), finds: ['danger 5 moved-early'] },
    {
      log: daily('Cu|fish out|signs', ...Array<number>(14).fill(2.25), '2.25||lethargic', '2.25|1 firefish|'),
      finds: ['warning 17 moved-against-terms'],
    },
    { log: daily('Cu|fish out', ...Array<number>(14).fill(2.25), '2.25|1 firefish'), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<Moved>[] {
  const moved = fishTexts(treatment.log, 'fish out');
  if (moved.length === 0) return [];
  const holds = countedHolds(treatment);
  const stopped = stoppedHold(treatment);
  const enough = holds.find(({ isEnough }) => isEnough);
  const found: Found<Moved>[] = [];
  for (const fish of moved) {
    const when = treatment.log.when[fish.entry] ?? NaN;
    if (enough !== undefined && when >= enough.reached - secondDays) break;
    if (stopped !== null && when >= stopped.when) break;
    const finding = movedAt(treatment, fish, when, holdAt(holds, when));
    if (finding !== null) found.push(finding);
  }
  return found;
}

function words(finding: Moved): FindingWords {
  const { days } = finding;
  if (finding.code === 'moved-early') {
    return {
      finding: `Moved after ${daysText(days)} of the hold ("${cut(finding.fish, 40)}"): at least ${shownNumber(finding.fewest)} unbroken days come first.`,
      why: `A fish may go to a copper-free observation tank after ${limits.transferDays.value} unbroken days at the earliest.`,
    };
  }
  const { wanted, untested, signs } = finding;
  return {
    finding:
      `Moved after ${daysText(days)} of ${shownNumber(wanted)}, though ` +
      [
        ...(untested === null ? [] : [`a stretch of ${untested.toFixed(1)} h was untested`]),
        ...(signs === null ? [] : [`signs were seen ${daysText(signs)} before`]),
      ].join(' and ') +
      `: let them stay until day ${shownNumber(wanted)}.`,
    why:
      `After ${limits.transferDays.value} days only where none of them was untested for over ${limits.transferGap.value} h ` +
      `and the last ${limits.quietDays.value} were without signs.`,
  };
}

function movedAt(
  treatment: Treatment,
  { entry, text }: FishText,
  when: number,
  hold: CountedHold | null,
): Found<Moved> | null {
  const { log, card } = treatment;
  const days = hold === null ? 0 : Math.max(0, when - Math.max(hold.from, arrivalOf(treatment, text)));
  const at = { when, row: log.row[entry] ?? 0, source: 'Practice' } as const;
  const fewest = Math.min(limits.transferDays.value, card.days);
  if (hold === null || days < fewest - secondDays) {
    return { ...at, code: 'moved-early', severity: 'danger', days, fewest, fish: text };
  }
  if (days >= card.days - secondDays) return null;
  const untested = longestStretch(treatment, hold, when);
  const signs = daysSinceSign(treatment, when);
  if (untested <= longestUntested + secondDays && signs === null) return null;
  const tooLong = untested > longestUntested + secondDays ? untested * hoursPerDay : null;
  return {
    ...at,
    code: 'moved-against-terms',
    severity: 'warning',
    days,
    wanted: card.days,
    untested: tooLong,
    signs,
  };
}

/** When the same fish came in, if a row says so in the same words. [serial day] */
function arrivalOf({ log }: Treatment, fish: string): number {
  const entry = log.texts['fish in']?.findIndex((text) => text !== '' && text.toLowerCase() === fish.toLowerCase());
  return entry === undefined || entry < 0 ? -Infinity : (log.when[entry] ?? NaN);
}

/** The longest stretch without a test in the days before the move. [days] */
function longestStretch({ readings }: Treatment, { hold }: CountedHold, when: number): number {
  const since = when - limits.transferDays.value;
  let longest = 0;
  let previous = Math.max(hold.from, since);
  for (let index = hold.firstIndex; index <= hold.lastIndex; index++) {
    const tested = readings.when[index] ?? NaN;
    if (tested > when) break;
    if (tested < since) continue;
    longest = Math.max(longest, tested - previous);
    previous = tested;
  }
  return Math.max(longest, when - previous);
}

function daysSinceSign({ signs }: Treatment, when: number): number | null {
  for (let index = signs.length - 1; index >= 0; index--) {
    const sign = signs[index];
    if (sign === undefined || sign.when > when || sign.reading !== 'sign') continue;
    return when - sign.when < limits.quietDays.value - secondDays ? when - sign.when : null;
  }
  return null;
}
