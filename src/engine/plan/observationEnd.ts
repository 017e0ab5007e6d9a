import type { FormName } from '../dose/forms.js';
import * as limits from '../limits/limits.js';
import { levelTolerance, serialDay, type CopperMgPerLitre, type SerialDay } from '../units/quantity.js';

interface EndedTreatment {
  /** When the copper, or the last other treatment, was out. */
  readonly ended: SerialDay;
  /** Median level of the hold. */
  readonly level?: CopperMgPerLitre | undefined;
  readonly form: FormName;
}

interface ObservationEnd {
  readonly earliest: SerialDay;
  readonly advised: SerialDay;
}

/**
 * When the observation after a treatment may end, and when it better ends.
 *
 * earliest = ended + 14 days, advised = ended + 28 days; both 28 days after a chelated hold run below 2.10 mg/L
 *
 * Basis: days of 24 hours; the hold's median reading as mg/L Cu.
 * Validity: an observation without signs.
 * Differs from the source: nothing.
 * Source: [Practice, observation after any treatment].
 *
 * @param treatment.ended end of the treatment [serial day]
 * @param treatment.level median level of the hold [mg/L]
 * @param treatment.form form of copper
 * @returns earliest and advised end [serial day]
 * @example observationEnd({ ended: serialDay(46082), form: 'chelated' }).advised // = 46110
 */
export function observationEnd({ ended, level, form }: EndedTreatment): ObservationEnd {
  const ranLow = form === 'chelated' && level !== undefined && level < limits.lowChelatedHold.value - levelTolerance;
  return {
    earliest: serialDay(ended + (ranLow ? limits.observeAdvised.value : limits.observeEarliest.value)),
    advised: serialDay(ended + limits.observeAdvised.value),
  };
}
