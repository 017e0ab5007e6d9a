import { isEnded } from './ends.js';
import type { Polarity } from './fact.js';
import type { Frame } from './framed.js';
import { isDenied } from './frames.js';
import type { Saying } from './sayings/saying.js';

/** Whether what a clause says is so here and now. */
export function polarityOf(saying: Saying, frame: Frame, from: number, to: number): Polarity {
  if (isElsewhere(saying, frame, from)) return 'other tank';
  if (frame.isHearsay) return 'hearsay';
  if (saying.polarity !== undefined) return saying.polarity;
  if (frame.isPlan) return 'planned';
  if (
    frame.isDenied ||
    (frame.isTakenBack && saying.ownsNegation !== true) ||
    (saying.ownsNegation !== true && isDenied(frame.clause, from, to))
  )
    return 'denied';
  return isEnded(saying.kind, frame.clause, frame.rest) ? 'ended' : 'now';
}

const moving = ['fish out', 'gear or water from another tank', 'copper in the top-off'];
/** What is done to the water of several tanks at once. */
const shared = [
  'medicines',
  'ammonia binder',
  'reducing dechlorinator',
  'absorbers',
  'dosed twice',
  'fish in',
  'wrong bottle',
  'overdose',
];

/** Whether a clause speaks of another tank where the words stand. */
function isElsewhere({ kind }: Saying, { clause, tanks, subject, isHereToo }: Frame, from: number): boolean {
  if (isHereToo && shared.includes(kind)) return false;
  const isMove = moving.includes(kind);
  const leaves = kind === 'fish out' || /\bcopper (?:is |was )?out of\b/.test(clause.low);
  const named = tanks.filter(({ isSource, isTarget }) => (leaves || !isSource) && !(isMove && isTarget));
  if (named.length === 0) return isMove ? false : subject !== null && !subject.own && !tanks.some(({ own }) => own);
  if (isMove) return !tanks.some(({ own }) => own) && named.every(({ at, isSource }) => at < from || isSource);
  const before = named.filter(({ at }) => at <= from);
  const nearest = before[before.length - 1] ?? named[0];
  return nearest !== undefined && !nearest.own && !named.some(({ own, isTarget }) => own && isTarget);
}
