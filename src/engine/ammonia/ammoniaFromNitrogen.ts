import { atomicMasses } from '../chemistry/molarMass.js';
import { ammoniaMgPerLitre, type AmmoniaMgPerLitre, type AmmoniaNitrogenMgPerLitre } from '../units/quantity.js';

/**
 * Ammonia given as nitrogen, as NH3.
 *
 * NH3 = N·(M(N) + 3·M(H)) ÷ M(N), 1.21589 mg NH3 for each mg N
 *
 * Definition: molar masses N 14.007, H 1.008 [CIAAW, abridged].
 *
 * @param nitrogen [mg N/L]
 * @returns [mg NH3/L]
 * @example ammoniaFromNitrogen(ammoniaNitrogenMgPerLitre(0.5)) // ≈ 0.60795
 */
export function ammoniaFromNitrogen(nitrogen: AmmoniaNitrogenMgPerLitre): AmmoniaMgPerLitre {
  const { N, H } = atomicMasses;
  return ammoniaMgPerLitre((nitrogen * (N + 3 * H)) / N);
}
