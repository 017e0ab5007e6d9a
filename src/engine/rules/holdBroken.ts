import { heldDays } from '../hold/heldFrom.js';
import { brokenHolds, type BrokenHold } from './brokenHolds.js';
import { countedHolds } from './countedHolds.js';
import type { Finding } from './finding.js';
import { meterErrorAt } from './meterErrorAt.js';
import type { Rule } from './rule.js';
import { slipRows } from './slipRows.js';
import type { Treatment } from './treatment.js';

/**
 * A reading below the low limit breaks a hold: danger, a row for each break that the verdict counts (`brokenHolds`). The
 * reading counts as it is written, so a break is found beside the slip that its row is named for.
 */
export const holdBroken: Rule = (treatment) =>
  brokenHolds(treatment, countedHolds(treatment)).map((broken) => found(treatment, broken));

function found(treatment: Treatment, { counted: { hold, from, end }, index, row, next }: BrokenHold): Finding {
  const { readings, terms, card } = treatment;
  const level = readings.low[index] ?? NaN;
  const under = readings.odd.get(row)?.under;
  return {
    code: 'hold-broken',
    severity: 'danger',
    when: end,
    row,
    source: 'Practice',
    level: under ?? level,
    isBound: under !== undefined,
    low: terms.low,
    days: heldDays(hold, terms.arrived),
    from,
    again: next?.from ?? null,
    withinError: level > card.band.low - meterErrorAt(card, level),
    slip: slipRows(treatment).has(row),
  };
}
