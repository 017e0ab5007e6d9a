import { heldDays } from '../hold/heldFrom.js';
import { brokenHolds, type BrokenHold } from './brokenHolds.js';
import { countedHolds } from './countedHolds.js';
import { meterErrorAt } from './meterError.js';
import { slipRows } from './slipRows.js';
import type { Treatment } from './treatment.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { daysText, levelText } from './phrases.js';
import { isoFromSerial } from '../../base/isoFromSerial.js';

interface HoldBroken {
  readonly code: 'hold-broken';
  readonly level: number;
  /** The reading was a bound, below `level`. */
  readonly isBound: boolean;
  readonly low: number;
  /** Days lost. */
  readonly days: number;
  readonly from: number;
  /** When the count starts again, null: not yet. [serial day] */
  readonly again: number | null;
  /** The reading is below by less than the meter's error. */
  readonly withinError: boolean;
  /** The reading is named as a slip as well. */
  readonly slip: boolean;
}

/**
 * A reading below the low limit breaks a hold: danger, a row for each break that the verdict counts (`brokenHolds`). The
 * reading counts as it is written, so a break is found beside the slip that its row is named for.
 */
export const holdBroken: Rule<HoldBroken> = {
  about: 'a reading below the low limit, which breaks the hold',
  codes: { 'hold-broken': ['danger'] },
  sources: ['Practice'],
  needs: [['copper']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu', 2.25, 2.25, 1.9, 2.25), finds: ['danger 4 hold-broken'] },
    { log: daily('Cu', 2.25, 2.25, 1.95, 2.25), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<HoldBroken>[] {
  return brokenHolds(treatment, countedHolds(treatment)).map((broken) => found(treatment, broken));
}

function words({ level, isBound, low, days, from, again, withinError, slip }: HoldBroken): FindingWords {
  return {
    finding:
      `Hold broken: ${isBound ? 'under ' : ''}${levelText(level)} is below ${levelText(low)}; ${daysText(days)} lost since ` +
      `${isoFromSerial(from)}, the count starts again${again === null ? ' at the next reading in the band' : ` at ${isoFromSerial(again)}`}` +
      `${withinError && !slip ? '; it is below by less than the meter’s error, but the reading counts' : ''}` +
      `${slip ? '; the row is also named as a slip: if it is one, correct or void it and the hold goes on' : ''}.`,
    why: 'The hold must be unbroken: any reading below the band sends it back to day one.',
  };
}

function found(
  treatment: Treatment,
  { counted: { hold, from, end }, index, row, next }: BrokenHold,
): Found<HoldBroken> {
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
