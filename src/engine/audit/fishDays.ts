import { heldDays } from '../hold/heldFrom.js';
import { holdDays } from '../hold/holdDays.js';
import { holdEnds, isLongEnough } from '../hold/holdEnds.js';
import type { HoldTerms } from '../hold/holdTerms.js';
import type { HoldTrace } from '../hold/holdTrace.js';
import { traceHolds } from '../hold/holdTracer.js';
import { zeroOrUntested } from '../hold/zeroOrUntested.js';
import type { ReadingColumns } from '../log/readingColumns.js';
import type { ColumnKind } from '../log/headings/columnKinds.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { firstLongEnough } from '../rules/holdAnswer.js';
import type { Treatment } from '../rules/treatment.js';
import { fishRoster } from './fishRoster.js';
import type { FishEvent, RosterFish } from './departFish.js';

/** A fish or group with its days. */
export interface FishDays {
  readonly fish: string;
  /** null: not said. [serial day] */
  readonly arrived: number | null;
  /** null: no arrival, no test, or dead on arrival. [days] */
  readonly holdDays: number | null;
  /** When the card's days are reached; null: no hold runs, or it left before. [serial day] */
  readonly readyOn: number | null;
  /** The days are held to a test. */
  readonly enough: boolean;
  /** The newcomer with which its days began again, where the card says so. [serial day] */
  readonly restarted: number | null;
  readonly count: number;
  /** When the last of them left; null: they are there. [serial day] */
  readonly left: number | null;
  readonly events: readonly FishEvent[];
}

const deciding: readonly ColumnKind[] = ['copper', 'time', 'fish in', 'fish out', 'dead'];

/**
 * The hold days of each fish or group: from its own arrival, to `as of` or to the moment it left.
 *
 * Definition: hold days as in `holdDays`, ready on as in `holdEnds`, with the fish's arrival; a fish without an arrival
 * has no days. Where the card says that newcomers restart the count, a later arrival counts for all, unless the days
 * were reached before it.
 *
 * @param treatment log and card
 * @returns a row for each fish or group, or the lowest row that cannot be read
 */
export function fishDays(treatment: Treatment): Result<readonly FishDays[], Problem> {
  const fault = treatment.log.faults.find(({ kind }) => deciding.includes(kind));
  if (fault !== undefined) return refuse(fault.problem);
  const roster = fishRoster(treatment);
  const { readings, terms } = treatment;
  return zeroOrUntested(readings, terms.low, (columns) => {
    const trace = traceHolds(columns, terms);
    return ok(roster.map((fish) => daysOf({ treatment, roster, columns, trace }, fish)));
  });
}

interface Asked {
  readonly treatment: Treatment;
  readonly roster: readonly RosterFish[];
  readonly columns: ReadingColumns;
  /** Up to `as of`. */
  readonly trace: HoldTrace;
}

function daysOf({ treatment, roster, columns, trace: whole }: Asked, fish: RosterFish): FishDays {
  const { written, arrived, count, left, events } = fish;
  const about = { fish: written, arrived, count, left, events };
  const none = { ...about, holdDays: null, readyOn: null, enough: false, restarted: null };
  if (arrived === null || (fish.doa > 0 && left === arrived)) return none;
  const { card, terms } = treatment;
  const own: HoldTerms = left === null ? terms : { ...terms, asOf: left };
  const trace = left === null ? whole : traceHolds(columns, own);
  const from =
    card.newcomers === 'restart' ? afterNewcomers(roster, trace, { arrived, left, wanted: card.days }) : arrived;
  const counted: HoldTerms = { ...own, arrived: from };
  const held = holdDays(trace, counted);
  const enough = firstLongEnough(trace, counted, card.days) !== null;
  const ready = holdEnds(trace, counted, card.days);
  return {
    ...about,
    holdDays: held.ok ? held.value : null,
    readyOn: ready.ok && (left === null || enough) ? ready.value : null,
    enough,
    restarted: from === arrived ? null : from,
  };
}

interface Stay {
  readonly arrived: number;
  readonly left: number | null;
  readonly wanted: number;
}

/** The last arrival that starts the count again: each later one does, until the days are reached. */
function afterNewcomers(roster: readonly RosterFish[], { holds }: HoldTrace, { arrived, left, wanted }: Stay): number {
  const newcomers = roster
    .flatMap((fish) => (fish.row === null || fish.arrived === null ? [] : [fish.arrived]))
    .filter((when) => when > arrived && when < (left ?? Infinity))
    .sort((a, b) => a - b);
  let from = arrived;
  for (const newcomer of newcomers) {
    const start = from;
    const isReached = holds.some((hold) => {
      const until = { ...hold, to: Math.min(hold.to, newcomer) };
      return isLongEnough(heldDays(until, start), wanted);
    });
    if (isReached) break;
    from = newcomer;
  }
  return from;
}
