import { instantDays } from '../units/quantity.js';
import { heldDays, heldFrom } from './heldFrom.js';
import { isLongEnough } from './holdEnds.js';
import type { HoldTerms } from './holdTerms.js';
import type { HoldEnd, HoldTrace } from './holdTrace.js';

/** A hold as the table of holds lists it. */
export interface HoldSpan {
  /** [serial day] */
  readonly from: number;
  /** [serial day] */
  readonly to: number;
  readonly days: number;
  readonly enough: boolean;
  readonly endedBy: HoldEnd;
  /** Row of the reading that ended it; null while it runs. */
  readonly row: number | null;
}

/**
 * Every hold, each with its days and what ended it. One over before the arrival is left out.
 *
 * Definition: see traceHolds; days from the start (or the arrival) to the last reading not below.
 *
 * @param trace holds of the readings
 * @param terms what counts as a hold
 * @param wanted unbroken days [days]
 * @returns holds in time order
 */
export function holdSpans(trace: HoldTrace, terms: HoldTerms, wanted: number): readonly HoldSpan[] {
  const { arrived } = terms;
  return trace.holds
    .filter((hold) => hold.endedBy.kind === 'running' || arrived === undefined || hold.to > arrived - instantDays)
    .map((hold) => {
      const held = heldDays(hold, arrived);
      return {
        from: heldFrom(hold, arrived),
        to: hold.to,
        days: held,
        enough: isLongEnough(held, wanted),
        endedBy: hold.endedBy,
        row: hold.endedBy.kind === 'running' ? null : hold.endedBy.row,
      };
    });
}
