import * as limits from '../limits/limits.js';
import { firstLongEnough } from '../rules/holdAnswer.js';
import type { Treatment } from '../rules/treatment.js';

/** The phases of a treatment: raising until the first hold, the hold with its breaks, observation after it. */
export interface TreatmentPhases {
  /** When the first hold began; Infinity: none did. [serial day] */
  readonly holdFrom: number;
  /** The last reading of the last hold, once the copper is being taken out; Infinity: it is not. [serial day] */
  readonly holdTo: number;
}

/**
 * When the phases of a treatment change. A hold that broke and was begun again is still the hold.
 *
 * Definition: observation begins after the last hold where one was long enough, or where a later reading is under half
 * the low limit.
 *
 * @param treatment log and card
 * @returns times of change
 */
export function treatmentPhases({ trace, terms, card, readings }: Treatment): TreatmentPhases {
  const [first] = trace.holds;
  const last = trace.holds[trace.holds.length - 1];
  if (first === undefined || last === undefined) return { holdFrom: Infinity, holdTo: Infinity };
  const isOut = (): boolean => {
    for (let index = last.lastIndex + 1; index < readings.count; index++) {
      if ((readings.low[index] ?? NaN) < card.band.low * limits.copperLeaving.value) return true;
    }
    return false;
  };
  const isOver = trace.running === null && (firstLongEnough(trace, terms, card.days) !== null || isOut());
  return { holdFrom: first.from, holdTo: isOver ? last.to : Infinity };
}
