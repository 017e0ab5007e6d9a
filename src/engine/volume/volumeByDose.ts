import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import {
  levelTolerance,
  litres,
  type CopperMgPerLitre,
  type CopperMgPerMl,
  type Litres,
  type Millilitres,
} from '../units/quantity.js';

interface TestDose {
  readonly added: Millilitres;
  readonly strength: CopperMgPerMl;
  readonly before: CopperMgPerLitre;
  readonly after: CopperMgPerLitre;
  readonly accuracy: CopperMgPerLitre;
}

/**
 * Real volume of water, from a known dose and the rise it gave.
 *
 * V = added·strength ÷ (after − before)
 *
 * Basis: copper as the element, all of it dissolved; the dose's own volume is neglected.
 * Validity: a rise of at least 6 × the accuracy of the test (common practice).
 * Definition: the copper added is the copper that the level rose by.
 *
 * @param dose.added dose [mL]
 * @param dose.strength strength of the solution [mg Cu/mL]
 * @param dose.before level before [mg/L]
 * @param dose.after level after [mg/L]
 * @param dose.accuracy plus or minus of the test [mg/L]
 * @returns volume [L]
 * @example volumeByDose({ added: millilitres(10), strength: copperMgPerMl(10), before: copperMgPerLitre(1), after: copperMgPerLitre(1.5), accuracy: copperMgPerLitre(0.05) }).value // = 200
 */
export function volumeByDose({ added, strength, before, after, accuracy }: TestDose): Result<Litres, Problem> {
  const rise = after - before;
  const needed = leastRise * accuracy;
  if (rise < needed - levelTolerance || rise <= levelTolerance) return refuse({ code: 'rise-too-small', rise, needed });
  return ok(litres((added * strength) / rise));
}

/** Both readings may be off; below this many accuracies the volume is a guess. */
const leastRise = 6;
