import { instantDays, secondDays } from '../../units/quantity.js';
import { rememberedReading } from './rememberedReading.js';
import type { SignReading } from './signReading.js';
import type { SignText } from './signText.js';

/** What a keeper does next; '' where nothing is to be done. */
export type SignStep = 'test first' | 'lower and wait' | 'raise slowly' | 'stop copper' | 'unread' | '';

export interface SignRow extends SignText {
  /** A text such as "no change" has the reading of the one before. */
  readonly reading: Exclude<SignReading['kind'], 'same'>;
  readonly step: SignStep;
}

/** So long without a sign after the last one, and the next is a second episode even if nobody wrote "recovered". [days] */
const clearDays = 3;

interface Course {
  phase: 'well' | 'ill' | 'recovered' | 'stopped';
  lastSign: number;
  /** What "no change" refers to. */
  last: SignRow['reading'];
  /** The fish named ill in this episode; none: no text of it names one. */
  readonly ill: Set<string>;
}

type Read = SignReading & { readonly kind: SignRow['reading'] };

/**
 * The steps that texts about fish under copper call for, in time order.
 *
 * Definition: the first sign: test ammonia, oxygen and copper first, as velvet, flukes and ammonia look the same; the
 * signs after it: lower the level and wait; once the fish is well: raise slowly. A sign after a recovery, or three days
 * of 24 hours or more after the last sign, unless it says "still": stop copper, from then on. Less than half a second
 * apart is one instant: one sign in it decides for all its rows. A text about other fish than the ill ones is no recovery.
 *
 * @param texts what was written, in any order
 * @returns rows in time order, one for each text
 */
export function signSteps(texts: readonly SignText[]): readonly SignRow[] {
  const ordered = inTimeOrder(texts);
  const course: Course = { phase: 'well', lastSign: -Infinity, last: 'unread', ill: new Set() };
  const rows: SignRow[] = [];
  let first = 0;
  while (first < ordered.length) {
    const when = ordered[first]?.when ?? NaN;
    let next = first + 1;
    while ((ordered[next]?.when ?? Infinity) - when < instantDays) next++;
    const instant: Read[] = [];
    for (let at = first; at < next; at++) instant.push(resolved(rememberedReading(ordered[at]?.text ?? ''), course));
    const step = stepOf(instant, when, course);
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
  const said = (kind: Read['kind']): readonly Read[] => instant.filter((reading) => reading.kind === kind);
  const strongest = strongestOf(instant);
  course.last = strongest ?? course.last;
  if (course.phase === 'stopped') return 'stop copper';
  if (strongest === 'sign') return stepAtSign(said('sign'), when, course);
  if (course.phase === 'ill' && strongest === 'easing') {
    course.lastSign = when;
    return 'lower and wait';
  }
  if (course.phase === 'ill' && strongest === 'clear' && !isRecovery(said('clear'), course)) return 'lower and wait';
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

function stepAtSign(signs: readonly Read[], when: number, course: Course): SignStep {
  const continuing = signs.every(({ continuing }) => continuing);
  const clearLongEnough = when - course.lastSign >= clearDays - secondDays && !continuing;
  const again = course.phase === 'recovered' || (course.phase === 'ill' && clearLongEnough);
  const step = again ? 'stop copper' : course.phase === 'well' ? 'test first' : 'lower and wait';
  course.phase = again ? 'stopped' : 'ill';
  course.lastSign = when;
  for (const { fish } of signs) fish.forEach((name) => course.ill.add(name));
  return step;
}

/** Whether these texts say that the ill fish are well; the course is then one of recovery. */
function isRecovery(clear: readonly Read[], course: Course): boolean {
  const unnamed = course.ill.size === 0 || clear.some(({ fish }) => fish.length === 0);
  for (const { fish } of clear) fish.forEach((name) => course.ill.delete(name));
  if (!unnamed && course.ill.size > 0) return false;
  course.phase = 'recovered';
  return true;
}
