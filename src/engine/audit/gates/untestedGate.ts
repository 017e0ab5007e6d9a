import { heldFrom } from '../../hold/heldFrom.js';
import * as limits from '../../limits/limits.js';
import { firstLongEnough } from '../../rules/holdAnswer.js';
import type { Treatment } from '../../rules/treatment.js';
import { hoursPerDay, secondDays } from '../../units/quantity.js';
import type { Gate } from './gate.js';
import type { Hold } from '../../hold/holdTrace.js';
import type { ReadingColumns } from '../../log/readingColumns.js';

const beforeTransfer = limits.transferGap.value / hoursPerDay;

/** Whether a stretch of the hold was untested for too long: over the longest gap, or 48 h in a hold before a transfer. */
export function untestedGate({ trace, terms, card, readings, now }: Treatment): Gate {
  const name = 'no untested stretch';
  const hold = firstLongEnough(trace, terms, card.days) ?? trace.running;
  if (hold === null) return { name, met: 'no', since: null, why: { code: 'no-hold' } };
  const gap = terms.longestGap;
  const limit = card.days < limits.publishedCourse.value ? Math.min(gap, beforeTransfer) : gap;
  const between = longestStretch(readings, hold);
  const since = hold === trace.running && trace.last !== null ? now - trace.last.when : 0;
  const longest = Math.max(between, since);
  const isMet = longest <= limit + secondDays;
  return {
    name,
    met: isMet ? 'yes' : 'no',
    since: isMet ? heldFrom(hold, terms.arrived) : null,
    why: {
      code: 'longest-stretch',
      hours: longest * hoursPerDay,
      limit: limit * hoursPerDay,
      isSince: since > between,
    },
  };
}

/**
 * The longest stretch between two tests of a hold.
 *
 * Definition: the largest difference of neighbouring times.
 *
 * @param readings in time order
 * @param hold readings from its first to its last
 * @returns [days]
 */
function longestStretch({ when }: ReadingColumns, { firstIndex, lastIndex }: Hold): number {
  let longest = 0;
  for (let index = firstIndex + 1; index <= lastIndex; index++) {
    longest = Math.max(longest, (when[index] ?? NaN) - (when[index - 1] ?? NaN));
  }
  return longest;
}
