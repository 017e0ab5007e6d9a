import { copperMgPerLitre } from '../units/quantity.js';

/** Levels of dissolved copper that a law names. */
export const copperCriteria = {
  saltWaterAcute: copperMgPerLitre(0.0048), // [CFR131, salt water, copper], seen
  saltWaterChronic: copperMgPerLitre(0.0031), // [CFR131, salt water, copper], seen
  /** Never a discharge limit. */
  drinkingWaterAction: copperMgPerLitre(1.3), // [Memory, drinking-water action level]
} as const;
