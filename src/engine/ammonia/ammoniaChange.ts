import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import {
  levelTolerance,
  litres,
  millilitres,
  type AmmoniaMgPerLitre,
  type CopperMgPerLitre,
  type CopperMgPerMl,
  type Litres,
  type Millilitres,
} from '../units/quantity.js';
import { shownNumber } from '../units/shown.js';

interface TankWithAmmonia {
  readonly volume: Litres;
  readonly ammonia: AmmoniaMgPerLitre;
  readonly wanted: AmmoniaMgPerLitre;
  readonly level: CopperMgPerLitre;
  readonly strength: CopperMgPerMl;
}

/** Water to change, and copper solution for the new water. */
export interface AmmoniaChange {
  readonly change: Litres;
  readonly copper: Millilitres;
}

/**
 * The water change that dilutes ammonia without losing the hold: the new water is brought to the tank's level first.
 *
 * change = volume·(1 − wanted ÷ ammonia); copper = change·level ÷ strength
 *
 * Basis: the new water holds no ammonia; ammonia and wanted in one basis, both total or both un-ionised.
 * Validity: 0 < wanted ≤ ammonia. Where they are equal there is nothing to change; zero would take the whole volume and is refused.
 * Definition: mass balance of one change.
 *
 * @param tank.volume net volume [L]
 * @param tank.ammonia now [mg/L]
 * @param tank.wanted after the change [mg/L]
 * @param tank.level copper in the tank [mg Cu/L]
 * @param tank.strength of the copper solution [mg Cu/mL]
 * @returns change [L] and copper solution [mL]
 * @example ammoniaChange({ volume: litres(200), ammonia: ammoniaMgPerLitre(1), wanted: ammoniaMgPerLitre(0.25), level: copperMgPerLitre(2.25), strength: copperMgPerMl(10) }).value.copper // = 33.75
 */
export function ammoniaChange({
  volume,
  ammonia,
  wanted,
  level,
  strength,
}: TankWithAmmonia): Result<AmmoniaChange, Problem> {
  const given = shownNumber(wanted);
  if (wanted <= 0) {
    return refuse({ code: 'out-of-limits', at: { field: 'wanted' }, given, limits: { above: 0 }, unit: 'mg/L' });
  }
  if (wanted > ammonia + levelTolerance) {
    return refuse({
      code: 'more-than',
      field: 'wanted',
      given,
      limitField: 'ammonia',
      limit: shownNumber(ammonia),
      unit: 'mg/L',
    });
  }
  const change = volume * Math.max(0, 1 - wanted / ammonia);
  return ok({ change: litres(change), copper: millilitres((change * level) / strength) });
}
