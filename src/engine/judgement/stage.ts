import { fishDays } from '../audit/fishDays.js';
import { fishRoster } from '../audit/fishRoster.js';
import { heldDays, heldFrom } from '../hold/heldFrom.js';
import type { Hold } from '../hold/holdTrace.js';
import { isLongEnough } from '../hold/holdEnds.js';
import * as limits from '../limits/limits.js';
import { eventKinds } from '../log/waterEvents.js';
import type { Treatment } from '../rules/treatment.js';
import { levelTolerance } from '../units/quantity.js';
import type { LastTest } from './lastTest.js';

/** Where a treatment stands: the first that fits. */
export type Stage = 'ended' | 'observing' | 'clearing' | 'days done' | 'holding' | 'hold broken' | 'raising' | 'set-up';

/** The days of the slowest fish still in. */
interface SlowestFish {
  /** '': no fish is known, the tank is one group. */
  readonly fish: string;
  readonly held: number;
  /** When its days are reached if the hold stands; null: no hold runs. [serial day] */
  readonly endsOn: number | null;
}

export interface Standing {
  readonly stage: Stage;
  readonly slowest: SlowestFish;
  /** Copper is or was in the water. */
  readonly copperIn: boolean;
  /** From the first reading that shows the copper gone; null: it is not. [serial day] */
  readonly outSince: number | null;
}

/** The stage of a treatment and its slowest fish; a dose after the copper was out begins a new course. */
export function standingOf(treatment: Treatment, last: LastTest | null): Standing {
  const course = courseOf(treatment);
  const holds = treatment.trace.holds.filter(({ from }) => from >= course.from);
  const slowest = slowestFish(treatment, holds);
  return { stage: stageOf(treatment, { course, holds, slowest, last }), slowest, ...course };
}

interface Course {
  readonly from: number;
  readonly copperIn: boolean;
  readonly outSince: number | null;
}

function courseOf({ events, card }: Treatment): Course {
  const trace = limits.copperOut.value * card.band.low;
  const gone = Math.max(limits.copperGone.value, trace) + levelTolerance;
  const enough = limits.copperTrace.value * card.band.low;
  let [from, copperIn, wasSeen] = [Infinity, false, false];
  let outSince: number | null = null;
  for (let index = 0; index < events.count; index++) {
    const when = events.when[index] ?? NaN;
    const kind = events.kind[index];
    const low = events.amount[index] ?? NaN;
    const isReading = kind === eventKinds.reading;
    if (kind === eventKinds.dose ? !copperIn || outSince !== null : isReading && !copperIn && low > gone) {
      [from, copperIn, outSince, wasSeen] = [when, true, null, isReading && low >= enough];
    } else if (isReading && copperIn) {
      wasSeen = wasSeen || low >= enough;
      if (low > gone) outSince = null;
      else if (wasSeen && (events.detail[index] ?? NaN) <= gone) outSince = outSince ?? when;
    }
  }
  return { from, copperIn, outSince };
}

interface Asked {
  readonly course: Course;
  readonly holds: readonly Hold[];
  readonly slowest: SlowestFish;
  readonly last: LastTest | null;
}

function stageOf(treatment: Treatment, { course, holds, slowest, last }: Asked): Stage {
  const { card, trace } = treatment;
  const roster = fishRoster(treatment);
  if (roster.length > 0 && roster.every(({ left }) => left !== null)) return 'ended';
  if (course.outSince !== null) return 'observing';
  const isDone = holds.length > 0 && isLongEnough(slowest.held, card.days);
  if (isDone) return (last?.low ?? 0) < card.band.low - levelTolerance ? 'clearing' : 'days done';
  if (holds.length > 0) return trace.running === null ? 'hold broken' : 'holding';
  return course.copperIn ? 'raising' : 'set-up';
}

/** Days count to a test: what lies past it is counted by the gates. */
function slowestFish(treatment: Treatment, holds: readonly Hold[]): SlowestFish {
  const rows = fishDays(treatment);
  const there = rows.ok ? rows.value.filter(({ left, holdDays }) => left === null && holdDays !== null) : [];
  const days = (fish: (typeof there)[number]): number => (fish.enough ? Infinity : (fish.holdDays ?? 0));
  const [slowest] = [...there].sort((a, b) => days(a) - days(b));
  if (slowest !== undefined) {
    const { fish, holdDays, readyOn, enough } = slowest;
    return { fish, held: enough ? Math.max(treatment.card.days, holdDays ?? 0) : (holdDays ?? 0), endsOn: readyOn };
  }
  const { card, terms, trace, now } = treatment;
  const longest = holds.reduce((most, hold) => Math.max(most, heldDays(hold, terms.arrived)), 0);
  if (isLongEnough(longest, card.days) || trace.running === null) return { fish: '', held: longest, endsOn: null };
  const from = heldFrom(trace.running, terms.arrived);
  const held = Math.min(now, trace.running.to + limits.creditedGap.value / 24) - from;
  return { fish: '', held: Math.min(Math.max(0, held), card.days - 1e-6), endsOn: from + card.days };
}
