import { type CopperMgPerLitre, copperMgPerLitre } from '../units/quantity.js';

/** Levels of dissolved copper that a law names. */
export const copperCriteria = {
  saltWaterAcute: copperMgPerLitre(0.0048), // [CFR131, salt water, copper], seen
  saltWaterChronic: copperMgPerLitre(0.0031), // [CFR131, salt water, copper], seen
  /** Never a discharge limit. */
  drinkingWaterAction: copperMgPerLitre(1.3), // [Memory, drinking-water action level]
} as const;

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
