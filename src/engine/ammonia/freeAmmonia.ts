import type { ReferenceKey } from '../references/references.js';
import { outsideValidity } from '../result/outsideValidity.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import {
  ammoniaMgPerLitre,
  ammoniaNitrogenMgPerLitre,
  type AmmoniaMgPerLitre,
  type Celsius,
  type PhNbs,
  type PracticalSalinity,
  type TotalAmmoniaMgPerLitre,
} from '../units/quantity.js';
import { ammoniaFromNitrogen } from './ammoniaFromNitrogen.js';
import { pkaBowerBidwell1978 } from './pkaBowerBidwell1978.js';
import { unionisedFraction } from './unionisedFraction.js';

/** Where the formula is used: pH as far as the printed table reaches, temperature and salinity as the formula states. */
const freeAmmoniaRange = {
  pH: { min: 7.5, max: 8.5, unit: '' },
  temperature: { min: 5, max: 35, unit: '°C' },
  salinity: { min: 5, max: 35, unit: 'g/kg' },
} as const;

const source: ReferenceKey = 'BowerBidwell1978';

/** What total ammonia is counted as. */
export const ammoniaBases = ['N', 'NH3'] as const;
export type AmmoniaBasis = (typeof ammoniaBases)[number];

interface AmmoniaTest {
  readonly total: TotalAmmoniaMgPerLitre;
  readonly pH: PhNbs;
  readonly temperature: Celsius;
  readonly salinity: PracticalSalinity;
  readonly as: AmmoniaBasis;
}

/**
 * Un-ionised ammonia in sea water from total ammonia.
 *
 * NH3 = total ÷ (1 + 10^(pKa − pH)), with the pKa of pkaBowerBidwell1978
 *
 * Basis: total as nitrogen or as NH3, as said, the answer always as NH3; pH on the NBS scale.
 * Validity: pH 7.5–8.5, 5–35 °C, 5–35 g/kg; outside it the answer is `outside-validity`. Liquid ammonia tests read falsely
 * positive in copper-treated water (common practice), and this formula carries such a reading through.
 * Differs from the source: the formula is stated for pH 7.8–8.3; from 7.5 to 8.5 it gives the printed table within 2 %.
 * Source: [BowerBidwell1978, % NH3 at salinity 34].
 *
 * @param test.total total ammonia [mg/L, as N or as NH3]
 * @param test.pH [NBS]
 * @param test.temperature [°C]
 * @param test.salinity [g/kg]
 * @param test.as the basis of total
 * @returns un-ionised ammonia [mg NH3/L]
 * @example freeAmmonia({ total: totalAmmoniaMgPerLitre(1), pH: phNbs(8), temperature: celsius(25), salinity: practicalSalinity(34), as: 'NH3' }).value // ≈ 0.0429
 */
export function freeAmmonia({ total, pH, temperature, salinity, as }: AmmoniaTest): Result<AmmoniaMgPerLitre, Problem> {
  const outside =
    outsideValidity({ field: 'pH', given: pH, ...freeAmmoniaRange.pH, source }) ??
    outsideValidity({ field: 'temperature', given: temperature, ...freeAmmoniaRange.temperature, source }) ??
    outsideValidity({ field: 'salinity', given: salinity, ...freeAmmoniaRange.salinity, source });
  if (outside !== null) return refuse(outside);
  const ammonia = as === 'N' ? ammoniaFromNitrogen(ammoniaNitrogenMgPerLitre(total)) : total;
  return ok(ammoniaMgPerLitre(ammonia * unionisedFraction(pH, pkaBowerBidwell1978({ temperature, salinity }))));
}
