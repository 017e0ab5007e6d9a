import { limits } from '../limits/limits.js';
import { hoursPerDay, secondDays } from '../units/quantity.js';
import { countedHolds, type CountedHold } from './countedHolds.js';
import type { Finding } from './finding.js';
import { fishTexts, type FishText } from './fishTexts.js';
import { holdAt } from './holdAt.js';
import type { Rule } from './rule.js';
import { stoppedHold } from './stoppedHold.js';
import type { Treatment } from './treatment.js';

const longestUntested = limits.transferGap.value / hoursPerDay;

const notes =
  /\b(?:moved|transferred) (?:all |the |every )*fish\b|\bfish (?:all )?(?:were |was )?(?:moved|transferred)\b|\b(?:moved|transferred) (?:\w+ ){0,4}to (?:the )?(?:display|observation|obs)\b/i;

/**
 * Fish moved before 14 days of an unbroken hold: danger. Later, but before the hold was long enough, a warning where a
 * stretch of over 48 h was untested or the last seven days were not without signs.
 */
export const movedBefore14: Rule = (treatment) => {
  const moved = fishTexts(treatment.log, 'fish out', notes);
  if (moved.length === 0) return [];
  const holds = countedHolds(treatment);
  const stopped = stoppedHold(treatment);
  const enough = holds.find(({ isEnough }) => isEnough);
  const found: Finding[] = [];
  for (const fish of moved) {
    const when = treatment.log.when[fish.entry] ?? NaN;
    if (enough !== undefined && when >= enough.reached - secondDays) break;
    if (stopped !== null && when >= stopped.when) break;
    const finding = movedAt(treatment, fish, when, holdAt(holds, when));
    if (finding !== null) found.push(finding);
  }
  return found;
};

function movedAt(
  treatment: Treatment,
  { entry, text }: FishText,
  when: number,
  hold: CountedHold | null,
): Finding | null {
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
