import type { AmmoniumPka, Celsius, PracticalSalinity } from '../units/quantity.js';

export interface SaltWater {
  readonly temperature: Celsius;
  readonly salinity: PracticalSalinity;
}

/** A formula for the pKa of ammonium; its rivals have the same form, so that one can stand in for another. */
export type PkaOfAmmonium = (water: SaltWater) => AmmoniumPka;
