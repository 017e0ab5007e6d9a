import { heldDays } from '../hold/heldFrom.js';
import { notedGapDays } from '../hold/holdTerms.js';
import { instantDays, secondDays } from '../units/quantity.js';
import { countedHolds } from './countedHolds.js';
import type { Treatment } from './treatment.js';

/** A stretch of a hold without a test. */
export interface Stretch {
  readonly days: number;
  /** Of the test that ended it, or for one that has not ended of the last test. */
  readonly row: number;
  readonly when: number;
  readonly isOpen: boolean;
  /** The days of the hold that starts again; null: it goes on, or a reading below ended it. */
  readonly restarts: number | null;
}

/** The stretches of over 36 h without a test in the holds that count, until one has lasted the wanted days. */
export function untestedIn(treatment: Treatment): readonly Stretch[] {
  const { readings, terms } = treatment;
  const found: Stretch[] = [];
  for (const { hold, from, reached, isEnough } of countedHolds(treatment)) {
    const { endedBy } = hold;
    const until = isEnough || endedBy.kind === 'running' ? hold.lastIndex : endedBy.index;
    const restart = !isEnough && endedBy.kind === 'untested' ? endedBy.index : -1;
    let previous = hold.from;
    for (let index = hold.firstIndex + 1; index <= until; index++) {
      const when = readings.when[index] ?? NaN;
      const days = when - previous;
      previous = when;
      if (index !== restart && days <= notedGapDays + secondDays) continue;
      if (when <= from + instantDays || when - days >= reached - secondDays) continue;
      const restarts = index === restart ? heldDays(hold, terms.arrived) : null;
      found.push({ days, row: readings.row[index] ?? 0, when, isOpen: false, restarts });
    }
  }
  return found;
}
