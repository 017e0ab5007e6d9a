import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import {
  copperMgPerMl,
  type CopperMgPerLitre,
  type CopperMgPerMl,
  type Litres,
  type Millilitres,
} from '../units/quantity.js';

interface Label {
  readonly dose: Millilitres;
  readonly treats: Litres;
  readonly raises: CopperMgPerLitre;
}

/**
 * Strength of a solution from what its label says a dose does.
 *
 * s = raises·treats ÷ dose
 *
 * Basis: copper as the element.
 * Validity: 0.2–100 mg/mL, both inside; outside it a unit was mistaken (common practice).
 * Definition: the copper that the dose brings, divided by the dose.
 *
 * @param label.dose volume of one dose [mL]
 * @param label.treats volume of water it is for [L]
 * @param label.raises rise of the level it gives [mg/L]
 * @returns strength [mg Cu/mL]
 * @example labelStrength({ dose: millilitres(5), treats: litres(100), raises: copperMgPerLitre(0.5) }).value // = 10
 */
export function labelStrength({ dose, treats, raises }: Label): Result<CopperMgPerMl, Problem> {
  const strength = (raises * treats) / dose;
  if (strength < lowest * (1 - relativeNoise) || strength > highest * (1 + relativeNoise)) {
    return refuse({ code: 'strength-unlikely', strength });
  }
  return ok(copperMgPerMl(strength));
}

/** Copper solutions sold to keepers, and stocks made from salt. [mg/mL] */
const lowest = 0.2;
const highest = 100;
const relativeNoise = 1e-9;
