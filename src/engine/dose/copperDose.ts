import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import {
  levelTolerance,
  millilitres,
  type CopperMgPerLitre,
  type CopperMgPerMl,
  type Litres,
  type Millilitres,
} from '../units/quantity.js';
import { bandOf } from './bandOf.js';
import type { FormName } from './forms.js';

interface Raise {
  readonly volume: Litres;
  readonly level: CopperMgPerLitre;
  readonly wanted: CopperMgPerLitre;
  readonly strength: CopperMgPerMl;
  readonly form?: FormName | undefined;
}

/**
 * Copper solution that raises a volume of water from one level to another.
 *
 * dose = V·(wanted − level) ÷ strength
 *
 * Basis: copper as the element; the dose's own volume is neglected.
 * Validity: wanted not below the level, and not above the band of the form; without a form not above the highest band.
 * Definition: the copper missing, divided by the copper in each mL.
 *
 * @param raise.volume net volume of water [L]
 * @param raise.level level now [mg/L]
 * @param raise.wanted level wanted [mg/L]
 * @param raise.strength strength of the solution [mg Cu/mL]
 * @param raise.form form whose band may not be passed
 * @returns dose, 0 where the level is the wanted one [mL]
 * @example copperDose({ volume: litres(200), level: copperMgPerLitre(0), wanted: copperMgPerLitre(2.25), strength: copperMgPerMl(10) }).value // = 45
 */
export function copperDose({ volume, level, wanted, strength, form }: Raise): Result<Millilitres, Problem> {
  if (wanted < level - levelTolerance) return refuse({ code: 'lowering-by-dose', wanted, level });
  const band = form ?? highestBand;
  const { low, high } = bandOf(band);
  if (wanted > high + levelTolerance) return refuse({ code: 'above-band', wanted, band, low, high });
  const missing = wanted - level;
  return ok(millilitres(missing <= levelTolerance ? 0 : (volume * missing) / strength));
}

/** Without a form only what is above every band is surely wrong. */
const highestBand: FormName = 'chelated';
