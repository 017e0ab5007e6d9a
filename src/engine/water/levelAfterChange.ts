import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { copperMgPerLitre, type CopperMgPerLitre, type Litres } from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';

interface Change {
  readonly volume: Litres;
  readonly level: CopperMgPerLitre;
  readonly change: Litres;
  readonly replacement: CopperMgPerLitre;
}

/**
 * Level after a water change.
 *
 * C' = C·(1 − f) + replacement·f   f = change ÷ V
 *
 * Basis: copper as the element.
 * Validity: change not above the volume, water mixed.
 * Definition: the copper left in the tank and the copper brought in, over the same volume.
 *
 * @param change.volume net volume of water [L]
 * @param change.level level before [mg/L]
 * @param change.change volume changed [L]
 * @param change.replacement level of the replacement water [mg/L]
 * @returns level [mg/L]
 * @example levelAfterChange({ volume: litres(200), level: copperMgPerLitre(2), change: litres(50), replacement: copperMgPerLitre(0) }).value // = 1.5
 */
export function levelAfterChange({ volume, level, change, replacement }: Change): Result<CopperMgPerLitre, Problem> {
  if (change > volume * (1 + relativeNoise)) {
    const given = shownNumber(change);
    const limit = shownNumber(volume);
    return refuse({ code: 'more-than', field: 'change', given, limitField: 'volume', limit, unit: 'L' });
  }
  const share = Math.min(1, change / volume);
  return ok(copperMgPerLitre(level * (1 - share) + replacement * share));
}

/** Equal volumes that came by different units differ by this much in binary. */
const relativeNoise = 1e-12;
