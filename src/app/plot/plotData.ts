import { levelAt, serialDay, type Treatment } from '../../engine/index.js';
import { holdMarks } from './holdMarks.js';
import { fishMarks, readingMarks, waterMarks } from './logMarks.js';
import type { CoursePoint, PlotData } from './plotParts.js';

export type { PlotData } from './plotParts.js';

/**
 * What the plot of a treatment shows.
 *
 * @param treatment one system's log and card
 * @returns readings, level by mass balance, holds, breaks, doses, changes and fish, in time order each
 */
export function plotData(treatment: Treatment): PlotData {
  const { card, log, now, isAsked } = treatment;
  const asOf = isAsked ? now : null;
  const readings = readingMarks(treatment);
  const parts = {
    readings,
    course: levelCourse(treatment),
    ...holdMarks(treatment),
    ...waterMarks(treatment),
    fish: fishMarks(treatment),
    unread: log.faults
      .filter(({ kind, when }) => kind === 'copper' && !Number.isNaN(when) && when <= (asOf ?? Infinity))
      .map(({ when, row }) => ({ when, row })),
  };
  return { ...period(parts, asOf), asOf, band: bandOfCard(card), wantedDays: card.days, ...parts };
}

type Timed = readonly { readonly when: number }[];

function period(
  { readings, doses, changes, fish, unread }: Record<'readings' | 'doses' | 'changes' | 'fish' | 'unread', Timed>,
  asOf: number | null,
): { from: number; to: number } {
  let from = Infinity;
  let to = -Infinity;
  for (const marks of [readings, doses, changes, fish, unread, asOf === null ? [] : [{ when: asOf }]]) {
    for (const { when } of marks) {
      from = Math.min(from, when);
      to = Math.max(to, when);
    }
  }
  return from > to ? { from: 0, to: 0 } : { from, to };
}

function bandOfCard({ band }: Treatment['card']): PlotData['band'] {
  return { low: band.low, high: band.high === Infinity ? null : band.high };
}

/** So many moments between events are looked at, over the whole log. */
const momentsBetween = 800;
/** And no more than so many between one event and the next. */
const mostBetween = 12;

/**
 * The level by mass balance from the first event on: right before and right after each event, and between events often
 * enough to show how it falls and how its band widens. Without a model there is none.
 */
function levelCourse({ events, levels, now }: Treatment): CoursePoint[] {
  const points: CoursePoint[] = [];
  if (levels === null || events.count === 0) return points;
  const { count, when } = events;
  const end = Math.max(when[count - 1] ?? NaN, now);
  const step = (end - (when[0] ?? NaN)) / momentsBetween;
  const add = (at: number, expected: number | undefined, low: number | undefined, high: number | undefined): void => {
    if (expected === undefined || low === undefined || high === undefined || Number.isNaN(expected + low + high))
      return;
    points.push({ when: at, expected, low, high });
  };
  for (let index = 0; index < count; index++) {
    const at = when[index] ?? NaN;
    const [before = NaN, top = NaN] = [levels.expectedBefore[index], levels.highBefore[index]];
    // The band is as wide downward, and cut at 0.
    add(at, before, Math.max(0, 2 * before - top), top);
    add(at, levels.expected[index], levels.low[index], levels.high[index]);
    const next = index + 1 < count ? (when[index + 1] ?? NaN) : end;
    const pieces = Math.min(mostBetween, Math.ceil((next - at) / step));
    for (let piece = 1; piece < pieces; piece++) {
      const moment = at + ((next - at) * piece) / pieces;
      const level = levelAt(events, levels, serialDay(moment));
      add(moment, level?.expected, level?.low, level?.high);
    }
  }
  if (end > (when[count - 1] ?? NaN)) {
    const level = levelAt(events, levels, serialDay(end));
    add(end, level?.expected, level?.low, level?.high);
  }
  return points;
}
