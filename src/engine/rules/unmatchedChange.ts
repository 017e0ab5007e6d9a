import * as limits from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import { levelTolerance } from '../units/quantity.js';
import { holdReached } from './holdAnswer.js';
import { carriedShare, levelBefore } from './steady/carriedShare.js';
import { isLowering } from './steady/isLowering.js';
import { nextReading } from './steady/nextReading.js';
import { steadyLevels, type SteadyLevels } from './steady/steadyLevels.js';
import { gate } from './steady/steadyPass.js';
import { windowWithoutDoses } from './steady/windowWithoutDoses.js';
import type { Treatment, WatchedWater } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { nearLevelText, rounded } from './phrases.js';
import { unreadableCells } from './unreadableCells.js';

interface UnmatchedChange {
  readonly code: 'unmatched-change';
  readonly litres: number;
  readonly before: number;
  readonly after: number;
  readonly low: number;
  /** The row says matched or premixed, and the next reading does not agree. */
  readonly saysMatched: boolean;
  /** A reading that shows the new water to have been at the tank's level after all. */
  readonly shownMatched: { readonly row: number; readonly level: number } | null;
}

/**
 * A water change that dilutes the copper: a danger where it takes the level below the low limit.
 *
 * Not raised: where the row says matched or premixed and the next reading agrees; where a dose in the same row makes up
 * for it; once the days are held; where the level is lowered on purpose (`isLowering`).
 *
 * Basis: the model of the log; without a strength that of the stretch between two readings, where no dose lies in it.
 * Definition: mass balance from the reading before. Where the next reading agrees with matched water it is a warning.
 */
export const unmatchedChange: Rule<UnmatchedChange> = {
  about: 'a water change that dilutes the copper',
  codes: { 'unmatched-change': ['danger', 'warning'] },
  sources: ['Practice'],
  needs: [['copper'], ['change']],
  yieldsTo: [...unreadableCells.yieldsTo, unreadableCells],
  find,
  words,
  examples: [
    { log: daily('Cu|WC L', 2.25, '2.25|60', 1.58, 1.57), finds: ['danger 3 unmatched-change'] },
    { log: daily('Cu|WC L|note', 2.25, '2.25|60|matched', 2.25, 2.25), finds: [] },
  ],
};

function find(treatment: Treatment, named: ReadonlySet<number>): readonly Found<UnmatchedChange>[] {
  const { events } = treatment;
  if (!events.kind.includes(eventKinds.change)) return [];
  const steady = steadyLevels(treatment);
  const reached = holdReached(treatment);
  const found: Found<UnmatchedChange>[] = [];
  for (let index = 0; index < events.count && (events.when[index] ?? NaN) < reached; index++) {
    if (events.kind[index] !== eventKinds.change || named.has(events.row[index] ?? 0)) continue;
    const finding = steady === null ? judgedAlone(treatment, index) : judged(treatment, steady, index);
    if (finding !== null) found.push(finding);
  }
  return found;
}

function words({ litres, before, after, low, saysMatched, shownMatched }: UnmatchedChange): FindingWords {
  return {
    finding:
      `${rounded(litres, 1)} L changed takes the level from ${nearLevelText(before)} to ${nearLevelText(after)}` +
      `${after < low ? `, below ${nearLevelText(low)}` : ''}: ${whatShows(saysMatched, shownMatched)}.`,
    why: "Replacement water is brought to the tank's level first; without a word a change brought no copper.",
  };
}

function whatShows(saysMatched: boolean, shown: UnmatchedChange['shownMatched']): string {
  if (saysMatched) return 'the row says matched, and the next reading does not agree';
  if (shown !== null) {
    return `the next reading, ${nearLevelText(shown.level)} in row ${shown.row}, fits matched water, so write "matched" if it was`;
  }
  return `bring new water to the tank's level first, or write "matched" where it was`;
}

/** Without a strength a change is judged by the readings beside it, where no dose lies between them. */
function judgedAlone(treatment: Treatment, index: number): Found<UnmatchedChange> | null {
  const stretch = windowWithoutDoses(treatment, index);
  if (stretch === null) return null;
  const finding = judged(stretch.water, stretch.steady, stretch.index);
  return finding === null || isLowering(treatment, index, finding) ? null : finding;
}

function judged(water: WatchedWater, steady: SteadyLevels, index: number): Found<UnmatchedChange> | null {
  const { events, card, levels } = water;
  const before = levelBefore(water, steady, index);
  if (levels === null || !(before >= limits.levelToKeep.value * card.band.low)) return null;
  const volume = levels.path.steps.volume[index] ?? NaN;
  const litres = events.amount[index] ?? NaN;
  const replacement = events.detail[index] ?? NaN;
  const saysMatched = Number.isNaN(replacement);
  const fall = (litres / volume) * (before - (saysMatched ? 0 : replacement));
  const after = before - fall;
  if (fall < limits.smallestFall.value * card.band.low || isMadeUp(water, index, fall)) return null;
  if (isLowering(water, index, { before, after })) return null;
  const next = nextReading(events, index);
  const shown = shownByNext(water, steady, { index, next, fall, saysMatched });
  if (saysMatched && shown !== 'unmatched') return null;
  const low = card.band.low;
  const isBelow = after < low - levelTolerance && before >= low - levelTolerance;
  const at = { when: events.when[index] ?? NaN, row: events.row[index] ?? 0, source: 'Practice' } as const;
  const reading = { row: events.row[next] ?? 0, level: events.amount[next] ?? NaN };
  const shownMatched = shown === 'matched' ? reading : null;
  const severity = isBelow && shownMatched === null ? 'danger' : 'warning';
  return { ...at, severity, code: 'unmatched-change', litres, before, after, low, saysMatched, shownMatched };
}

function isMadeUp({ events, levels }: WatchedWater, index: number, fall: number): boolean {
  let added = 0;
  for (let at = index + 1; at < events.count && events.row[at] === events.row[index]; at++) {
    if (events.kind[at] === eventKinds.dose) added += levels?.path.steps.added[at] ?? 0;
  }
  return added >= limits.madeUp.value * fall;
}

interface Told {
  readonly index: number;
  readonly next: number;
  readonly fall: number;
  readonly saysMatched: boolean;
}

/** Which of matched and unmatched water the next reading shows. */
function shownByNext(
  { events, levels }: WatchedWater,
  steady: SteadyLevels,
  { index, next, fall, saysMatched }: Told,
): 'matched' | 'unmatched' | 'neither' {
  if (next < 0 || levels === null) return 'neither';
  const spread = steady.spread[next] ?? NaN;
  const apart = fall * carriedShare(levels.path.steps, steady.rate, index, next);
  if (!(apart > limits.matchedApart.value * spread)) return 'neither';
  const predicted = steady.predicted[next] ?? NaN;
  const matched = saysMatched ? predicted : predicted + apart;
  const level = events.amount[next] ?? NaN;
  const isNearer = Math.abs(level - matched) < Math.abs(level - (matched - apart));
  if (isNearer) return Math.abs(level - matched) < gate * spread ? 'matched' : 'neither';
  return level < matched - limits.matchedDenied.value * spread ? 'unmatched' : 'neither';
}
