import type { Treatment } from '../../engine/index.js';
import { fishMarks } from './fishMarks.js';
import { holdMarks } from './holdMarks.js';
import { levelCourse } from './levelCourse.js';
import type { PlotData } from './plotParts.js';
import { readingMarks } from './readingMarks.js';
import { waterMarks } from './waterMarks.js';

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
