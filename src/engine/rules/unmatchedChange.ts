import { limits } from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import { levelTolerance } from '../units/quantity.js';
import type { Finding, FindingAt, FindingBody } from './finding.js';
import { holdReached } from './holdReached.js';
import type { Rule } from './rule.js';
import { carriedShare } from './steady/carriedShare.js';
import { isLowering } from './steady/isLowering.js';
import { levelBefore } from './steady/levelBefore.js';
import { nextReading } from './steady/nextReading.js';
import { steadyLevels, type SteadyLevels } from './steady/steadyLevels.js';
import { gate } from './steady/steadyPass.js';
import { windowWithoutDoses } from './steady/windowWithoutDoses.js';
import type { Treatment } from './treatment.js';

/**
 * A water change that dilutes the copper: a danger where it takes the level below the low limit.
 *
 * Not raised: where the row says matched or premixed and the next reading agrees; where a dose in the same row makes up
 * for it; once the days are held; where the level is lowered on purpose (`isLowering`).
 *
 * Basis: the model of the log; without a strength that of the stretch between two readings, where no dose lies in it.
 * Definition: mass balance from the reading before. Where the next reading agrees with matched water it is a warning.
 */
export const unmatchedChange: Rule = (treatment, named) => {
  const { events } = treatment;
  if (!events.kind.includes(eventKinds.change)) return [];
  const steady = steadyLevels(treatment);
  const reached = holdReached(treatment);
  const found: Finding[] = [];
  for (let index = 0; index < events.count && (events.when[index] ?? NaN) < reached; index++) {
    if (events.kind[index] !== eventKinds.change || named.has(events.row[index] ?? 0)) continue;
    const finding = steady === null ? judgedAlone(treatment, index) : judged(treatment, steady, index);
    if (finding !== null) found.push(finding);
  }
  return found;
};

/** Without a strength a change is judged by the readings beside it, where no dose lies between them. */
function judgedAlone(treatment: Treatment, index: number): Finding | null {
  const stretch = windowWithoutDoses(treatment, index);
  if (stretch === null) return null;
  const finding = judged(stretch.treatment, stretch.steady, stretch.index);
  return finding === null || isLowering(treatment, index, finding) ? null : finding;
}

function judged(treatment: Treatment, steady: SteadyLevels, index: number): UnmatchedChange | null {
  const { events, card, levels } = treatment;
  const before = levelBefore(treatment, steady, index);
  if (levels === null || !(before >= limits.levelToKeep.value * card.band.low)) return null;
  const volume = levels.path.steps.volume[index] ?? NaN;
  const litres = events.amount[index] ?? NaN;
  const replacement = events.detail[index] ?? NaN;
  const saysMatched = Number.isNaN(replacement);
  const fall = (litres / volume) * (before - (saysMatched ? 0 : replacement));
  const after = before - fall;
  if (fall < limits.smallestFall.value * card.band.low || isMadeUp(treatment, index, fall)) return null;
  if (isLowering(treatment, index, { before, after })) return null;
  const next = nextReading(events, index);
  const shown = shownByNext(treatment, steady, { index, next, fall, saysMatched });
  if (saysMatched && shown !== 'unmatched') return null;
  const low = card.band.low;
  const isBelow = after < low - levelTolerance && before >= low - levelTolerance;
  const at = { when: events.when[index] ?? NaN, row: events.row[index] ?? 0, source: 'Practice' } as const;
  const reading = { row: events.row[next] ?? 0, level: events.amount[next] ?? NaN };
  const shownMatched = shown === 'matched' ? reading : null;
  const severity = isBelow && shownMatched === null ? 'danger' : 'warning';
  return { ...at, severity, code: 'unmatched-change', litres, before, after, low, saysMatched, shownMatched };
}

type UnmatchedChange = FindingAt & Extract<FindingBody, { readonly code: 'unmatched-change' }>;

function isMadeUp({ events, levels }: Treatment, index: number, fall: number): boolean {
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
  { events, levels }: Treatment,
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
