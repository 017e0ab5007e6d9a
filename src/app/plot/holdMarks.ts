import { brokenHolds, countedHolds, holdSpans, notedGapDays, untestedIn, type Treatment } from '../../engine/index.js';
import type { PlotBreak, PlotData, PlotHold, UntestedSpan } from './plotParts.js';

/** Holds as HOLDS lists them; breaks and untested stretches as the audit's verdict counts them. */
export function holdMarks(treatment: Treatment): Pick<PlotData, 'holds' | 'breaks' | 'untested'> {
  const { trace, terms, card } = treatment;
  const stretches = untestedIn(treatment);
  const below = brokenHolds(treatment, countedHolds(treatment)).map(({ counted, row }): PlotBreak => {
    const { end, from, hold } = counted;
    return { when: end, row, why: 'below', lost: Math.max(0, hold.to - from) };
  });
  const restarts = stretches.flatMap(({ when, row, restarts: lost }): PlotBreak[] =>
    lost === null ? [] : [{ when, row, why: 'untested', lost }],
  );
  return {
    holds: holdSpans(trace, terms, card.days).map(({ from, to, days, enough, endedBy }): PlotHold => {
      const standing = enough ? 'enough' : endedBy.kind === 'running' ? 'running' : 'too short';
      return { from, to: Math.max(from, to), days, standing };
    }),
    breaks: [...below, ...restarts].sort((a, b) => a.when - b.when),
    untested: [...stretches.map(spanOf), ...openSpan(treatment)],
  };
}

interface Ended {
  readonly days: number;
  readonly row: number;
  readonly when: number;
}

function spanOf({ days, row, when }: Ended): UntestedSpan {
  return { from: when - days, to: when, hours: days * 24, row };
}

/** From the last test to the moment asked for, where a hold still runs. */
function openSpan({ trace, now, isAsked }: Treatment): UntestedSpan[] {
  const { last, running } = trace;
  if (!isAsked || last === null || running === null || now - last.when <= notedGapDays) return [];
  return [spanOf({ days: now - last.when, row: last.row, when: now })];
}
