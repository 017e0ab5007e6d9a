import * as limits from '../../limits/limits.js';
import { instantDays, secondDays } from '../../units/quantity.js';
import { OpenSigns } from './openSigns.js';
import { rememberedReading } from './rememberedReading.js';
import type { SignReading } from './signReading.js';

/** What was written about the fish in one row. */
export interface SignText {
  /** [serial day] */
  readonly when: number;
  readonly row: number;
  readonly text: string;
}

/** What a keeper does next; '' where nothing is to be done. */
export type SignStep = 'test first' | 'lower and wait' | 'raise slowly' | 'stop copper' | 'unread' | '';

export interface SignRow extends SignText {
  /** A text such as "no change" has the reading of the one before. */
  readonly reading: Exclude<SignReading['kind'], 'same'>;
  readonly step: SignStep;
}

/** So long without a sign after the last one, and the next is a second episode even if nobody wrote "recovered". [days] */
const clearDays = limits.clearDays.value;

interface Course {
  phase: 'well' | 'ill' | 'recovered' | 'stopped';
  lastSign: number;
  /** The last text of any kind. */
  lastText: number;
  /** Since the last sign a text was read that has none. */
  clearSeen: boolean;
  /** What "no change" refers to. */
  last: SignRow['reading'];
  /** Of this episode. */
  readonly open: OpenSigns;
}

type Read = SignReading & { readonly kind: SignRow['reading'] };

/**
 * The steps that texts about fish under copper call for, in time order.
 *
 * Definition: the first sign: test ammonia, oxygen and copper first, as velvet, flukes and ammonia look the same; the
 * signs after it: lower the level and wait; once every sign of the episode is answered (see OpenSigns): raise slowly. A
 * sign after a recovery, or after three clear days, unless it says "still": stop copper, from then on. Clear days are
 * three days of 24 hours or more since the last sign, with a text that has none, or nothing written for so long: texts
 * that are not understood make no clear day. Less than half a second apart is one instant: one sign in it decides for
 * all its rows.
 *
 * @param texts what was written, in any order
 * @returns rows in time order, one for each text
 */
export function signSteps(texts: readonly SignText[]): readonly SignRow[] {
  const ordered = inTimeOrder(texts);
  const course: Course = {
    phase: 'well',
    lastSign: -Infinity,
    lastText: -Infinity,
    clearSeen: false,
    last: 'unread',
    open: new OpenSigns(),
  };
  const rows: SignRow[] = [];
  let first = 0;
  while (first < ordered.length) {
    const when = ordered[first]?.when ?? NaN;
    let next = first + 1;
    while ((ordered[next]?.when ?? Infinity) - when < instantDays) next++;
    const instant: Read[] = [];
    for (let at = first; at < next; at++) instant.push(resolved(rememberedReading(ordered[at]?.text ?? ''), course));
    const step = stepOf(instant, when, course);
    course.lastText = when;
    for (const { kind } of instant) {
      const { row, text, when: time } = ordered[first++] ?? nothing;
      const unread = kind === 'unread' && course.phase !== 'stopped';
      rows.push({ when: time, row, text, reading: kind, step: unread ? 'unread' : step });
    }
  }
  return rows;
}

const nothing: SignText = { when: NaN, row: 0, text: '' };

/** A log's texts come in time order. */
function inTimeOrder(texts: readonly SignText[]): readonly SignText[] {
  const order = (a: SignText, b: SignText): number => a.when - b.when || a.row - b.row;
  const isOrdered = texts.every((text, at) => at === 0 || order(texts[at - 1] ?? text, text) <= 0);
  return isOrdered ? texts : [...texts].sort(order);
}

function resolved(reading: SignReading, course: Course): Read {
  return isRead(reading) ? reading : { ...reading, kind: course.last };
}

function isRead(reading: SignReading): reading is Read {
  return reading.kind !== 'same';
}

/** The step of one instant; the course goes on from it. */
function stepOf(instant: readonly Read[], when: number, course: Course): SignStep {
  const strongest = strongestOf(instant);
  course.last = strongest ?? course.last;
  if (course.phase === 'stopped') return 'stop copper';
  if (strongest === 'sign') return stepAtSign(instant, when, course);
  if (course.phase === 'ill' && strongest !== null) {
    const quiet = strongest === 'clear' && wereClearDays(when, course);
    for (const reading of instant) if (reading.kind !== 'unread') course.open.answer(reading, quiet);
    if (strongest === 'easing') noteSign(when, course);
    else if (course.open.areNone) course.phase = 'recovered';
    else course.clearSeen = true;
  }
  return course.phase === 'recovered' ? 'raise slowly' : course.phase === 'ill' ? 'lower and wait' : '';
}

/** What one instant is taken for, where its rows differ; null: none of them is understood. */
function strongestOf(instant: readonly Read[]): 'sign' | 'easing' | 'clear' | null {
  let strongest: 'easing' | 'clear' | null = null;
  for (const { kind } of instant) {
    if (kind === 'sign') return kind;
    if (kind === 'easing' || (kind === 'clear' && strongest === null)) strongest = kind;
  }
  return strongest;
}

/** Three clear days up to a moment; only texts that are not understood in between make none. */
function wereClearDays(when: number, { lastSign, lastText, clearSeen }: Course): boolean {
  const isLongSince = (time: number): boolean => when - time >= clearDays - secondDays;
  return isLongSince(lastSign) && (clearSeen || isLongSince(lastText));
}

function noteSign(when: number, course: Course): void {
  course.lastSign = when;
  course.clearSeen = false;
}

function stepAtSign(instant: readonly Read[], when: number, course: Course): SignStep {
  const signs = instant.filter(({ kind }) => kind === 'sign');
  const continuing = signs.every(({ continuing }) => continuing);
  const again = course.phase === 'recovered' || (course.phase === 'ill' && wereClearDays(when, course) && !continuing);
  const step = again ? 'stop copper' : course.phase === 'well' ? 'test first' : 'lower and wait';
  course.phase = again ? 'stopped' : 'ill';
  noteSign(when, course);
  for (const reading of signs) course.open.answer(reading, false);
  for (const reading of signs) course.open.note(reading);
  return step;
}
