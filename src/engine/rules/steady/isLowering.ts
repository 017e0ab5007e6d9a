import * as limits from '../../limits/limits.js';
import { eventKinds } from '../../log/waterEvents.js';
import { levelTolerance } from '../../units/quantity.js';
import { signStepAt } from '../signs/signStepAt.js';
import type { WatchedWater } from '../treatment.js';
import { entryOfRow } from './entryOfRow.js';

const takingOut =
  /\b(?:copper out|(?:remov|lower|reduc|dilut|pull|strip|clear)(?:e|es|ed|ing)?\b[^.;]*\b(?:cu|copper|level)|bring(?:ing)? (?:it|copper|level) down)\b/i;
/**
 * Whether a water change lowers the level on purpose: from above the band into it, for fish that show signs and without
 * leaving the band, in words, or as one of several changes after the last reading in the band.
 */
export function isLowering(
  water: WatchedWater,
  index: number,
  { before, after }: { readonly before: number; readonly after: number },
): boolean {
  const { band } = water.card;
  const staysIn = after >= band.low - levelTolerance;
  if (before > band.high + levelTolerance && staysIn) return true;
  const text = noteOf(water, index);
  if (text !== '' && takingOut.test(text)) return true;
  return (staysIn && isForSigns(water, index)) || isTakingOut(water, index);
}

function noteOf({ log, events }: WatchedWater, index: number): string {
  const notes = log.texts.note;
  if (notes === null) return '';
  return notes[entryOfRow(log, events.row[index] ?? 0, events.when[index] ?? NaN)] ?? '';
}

function isForSigns({ signs, events }: WatchedWater, index: number): boolean {
  const step = signStepAt(signs, events.when[index] ?? NaN);
  return step === 'lower and wait' || step === 'test first' || step === 'stop copper';
}

/** No reading in the band comes after it, and it is one of several changes since the last one that did. */
function isTakingOut({ events, card }: WatchedWater, index: number): boolean {
  const isHeld = (at: number) =>
    events.kind[at] === eventKinds.reading && (events.amount[at] ?? NaN) >= card.band.low - levelTolerance;
  for (let at = index + 1; at < events.count; at++) if (isHeld(at)) return false;
  let changes = 0;
  for (let at = events.count - 1; at >= 0 && !isHeld(at); at--) {
    if (events.kind[at] === eventKinds.dose) return false;
    if (events.kind[at] === eventKinds.change && !Number.isNaN(events.detail[at] ?? NaN)) changes++;
  }
  return changes >= limits.loweringChanges.value;
}
