import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { levelTolerance, litres, type CopperMgPerLitre, type Litres } from '../units/quantity.js';

interface Lowering {
  readonly volume: Litres;
  readonly level: CopperMgPerLitre;
  readonly wanted: CopperMgPerLitre;
  readonly replacement: CopperMgPerLitre;
}

/**
 * Water to change in one go so that the level falls to the wanted one.
 *
 * change = V·(C − wanted) ÷ (C − replacement)
 *
 * Basis: copper as the element.
 * Validity: wanted above the replacement level and not above the level.
 * Definition: the inverse of levelAfterChange.
 *
 * @param lowering.volume net volume of water [L]
 * @param lowering.level level now [mg/L]
 * @param lowering.wanted level wanted [mg/L]
 * @param lowering.replacement level of the replacement water [mg/L]
 * @returns volume to change, 0 where the level is the wanted one [L]
 * @example changeToLower({ volume: litres(200), level: copperMgPerLitre(2.5), wanted: copperMgPerLitre(2), replacement: copperMgPerLitre(0) }).value // = 40
 */
export function changeToLower({ volume, level, wanted, replacement }: Lowering): Result<Litres, Problem> {
  if (Math.abs(level - wanted) <= levelTolerance) return ok(litres(0));
  if (wanted > level) return refuse({ code: 'raising-by-change', wanted, level });
  if (wanted <= replacement + levelTolerance) return refuse({ code: 'not-above-replacement', wanted, replacement });
  return ok(litres((volume * (level - wanted)) / (level - replacement)));
}
