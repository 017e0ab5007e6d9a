import { instantDays, secondDays } from '../../units/quantity.js';
import { signReading, type SignReading } from './signReading.js';
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

/** What one instant is taken for, where its rows differ. */
const strongestFirst = ['sign', 'easing', 'clear'] as const;

interface Course {
  phase: 'well' | 'ill' | 'recovered' | 'stopped';
  lastSign: number;
  /** What "no change" refers to. */
  last: SignRow['reading'];
  /** The fish named ill in this episode; none: no text of it names one. */
  readonly ill: Set<string>;
}

interface Read extends SignText {
  readonly reading: SignReading & { readonly kind: SignRow['reading'] };
}

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
  const ordered = [...texts].sort((a, b) => a.when - b.when || a.row - b.row);
  const readingOf = remembered(signReading);
  const course: Course = { phase: 'well', lastSign: -Infinity, last: 'unread', ill: new Set() };
  const rows: SignRow[] = [];
  let first = 0;
  while (first < ordered.length) {
    const when = ordered[first]?.when ?? NaN;
    let next = first + 1;
    while ((ordered[next]?.when ?? Infinity) - when < instantDays) next++;
    const instant = ordered
      .slice(first, next)
      .map((text) => ({ ...text, reading: resolved(readingOf(text.text), course) }));
    const step = stepOf(instant, course);
    for (const { reading, ...text } of instant) {
      const unread = reading.kind === 'unread' && course.phase !== 'stopped';
      rows.push({ ...text, reading: reading.kind, step: unread ? 'unread' : step });
    }
    first = next;
  }
  return rows;
}

/** The same words come again and again in a log. */
function remembered(read: (text: string) => SignReading): (text: string) => SignReading {
  const known = new Map<string, SignReading>();
  return (text) => {
    const reading = known.get(text) ?? read(text);
    known.set(text, reading);
    return reading;
  };
}

function resolved(reading: SignReading, course: Course): Read['reading'] {
  return { ...reading, kind: reading.kind === 'same' ? course.last : reading.kind };
}

/** The step of one instant; the course goes on from it. */
function stepOf(instant: readonly Read[], course: Course): SignStep {
  const said = (kind: SignRow['reading']): readonly Read[] => instant.filter(({ reading }) => reading.kind === kind);
  const when = instant[0]?.when ?? NaN;
  course.last = strongestFirst.find((kind) => said(kind).length > 0) ?? course.last;
  if (course.phase === 'stopped') return 'stop copper';
  const signs = said('sign');
  if (signs.length > 0) return stepAtSign(signs, when, course);
  if (said('easing').length > 0 && course.phase === 'ill') {
    course.lastSign = when;
    return 'lower and wait';
  }
  if (course.phase === 'ill' && said('clear').length > 0 && !isRecovery(said('clear'), course)) return 'lower and wait';
  return course.phase === 'recovered' ? 'raise slowly' : course.phase === 'ill' ? 'lower and wait' : '';
}

function stepAtSign(signs: readonly Read[], when: number, course: Course): SignStep {
  const continuing = signs.every(({ reading }) => reading.continuing);
  const clearLongEnough = when - course.lastSign >= clearDays - secondDays && !continuing;
  const again = course.phase === 'recovered' || (course.phase === 'ill' && clearLongEnough);
  const step = again ? 'stop copper' : course.phase === 'well' ? 'test first' : 'lower and wait';
  course.phase = again ? 'stopped' : 'ill';
  course.lastSign = when;
  for (const { reading } of signs) reading.fish.forEach((name) => course.ill.add(name));
  return step;
}

/** Whether these texts say that the ill fish are well; the course is then one of recovery. */
function isRecovery(clear: readonly Read[], course: Course): boolean {
  const unnamed = course.ill.size === 0 || clear.some(({ reading }) => reading.fish.length === 0);
  for (const { reading } of clear) reading.fish.forEach((name) => course.ill.delete(name));
  if (!unnamed && course.ill.size > 0) return false;
  course.phase = 'recovered';
  return true;
}
