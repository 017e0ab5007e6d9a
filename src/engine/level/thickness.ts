/** No more than this share of the water is taken as evaporated. */
const mostEvaporated = 0.5;

/**
 * How much evaporation thickens the water: level in the tank ÷ level of the full system.
 *
 * thick = V ÷ (V − lost)
 *
 * Basis: copper does not evaporate.
 * Validity: at most half the water counts as evaporated; more is a mistake of the log.
 * Definition: one mass of copper in two volumes.
 *
 * @param lost water that is missing [L]
 * @param volume net volume of the full system [L]
 * @returns [1]
 * @example thickness(50, 200) // ≈ 1.3333
 */
export function thickness(lost: number, volume: number): number {
  return lost > 0 ? 1 / (1 - Math.min(mostEvaporated, lost / volume)) : 1;
}
