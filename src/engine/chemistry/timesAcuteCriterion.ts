import type { CopperMgPerLitre } from '../units/quantity.js';
import { copperCriteria } from './copperCriteria.js';

/**
 * How many times the acute salt-water criterion a level is.
 *
 * C ÷ 0.0048 mg/L
 *
 * Basis: dissolved copper as the element.
 * Validity: any level.
 * Differs from the source: nothing.
 * Source: [CFR131, salt water, copper, 4.8 µg/L].
 *
 * @param level copper level [mg/L]
 * @returns ratio [1]
 * @example timesAcuteCriterion(copperMgPerLitre(0.2)) // ≈ 41.667
 */
export function timesAcuteCriterion(level: CopperMgPerLitre): number {
  return level / copperCriteria.saltWaterAcute;
}
