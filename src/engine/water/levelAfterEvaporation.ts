import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { copperMgPerLitre, type CopperMgPerLitre, type Litres } from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';

interface Evaporation {
  readonly full: Litres;
  readonly level: CopperMgPerLitre;
  readonly lost: Litres;
}

/**
 * Level after evaporation, before topping off.
 *
 * C' = C·V ÷ (V − lost)
 *
 * Basis: copper as the element; copper does not evaporate.
 * Validity: less lost than there is.
 * Definition: the same copper in the water that is left.
 *
 * @param evaporation.full volume when full [L]
 * @param evaporation.level level when full [mg/L]
 * @param evaporation.lost volume evaporated [L]
 * @returns level [mg/L]
 * @example levelAfterEvaporation({ full: litres(200), level: copperMgPerLitre(2), lost: litres(40) }).value // = 2.5
 */
export function levelAfterEvaporation({ full, level, lost }: Evaporation): Result<CopperMgPerLitre, Problem> {
  if (lost >= full * (1 - relativeNoise)) {
    const given = shownNumber(lost);
    const limit = shownNumber(full);
    return refuse({ code: 'not-below', field: 'lost', given, limitField: 'full volume', limit, unit: 'L' });
  }
  return ok(copperMgPerLitre((level * full) / (full - lost)));
}

/** Equal volumes that came by different units differ by this much in binary. */
const relativeNoise = 1e-12;
