import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { levelTolerance, type CopperMgPerLitre, type Fraction } from '../units/quantity.js';

interface Clearing {
  readonly level: CopperMgPerLitre;
  readonly wanted: CopperMgPerLitre;
  /** Above 0, at most 1. */
  readonly share: Fraction;
}

/**
 * Copper-free water changes that bring the level to or below the wanted one.
 *
 * the least n with C·(1 − f)^n ≤ wanted
 *
 * Basis: copper as the element; the same share changed each time, mixed in between.
 * Validity: copper-free replacement water, nothing given back by silicone or sand; compared to 1e-9 mg/L.
 * Definition: each change leaves the share that was not changed.
 *
 * @param clearing.level level now [mg/L]
 * @param clearing.wanted level wanted [mg/L]
 * @param clearing.share share of the volume changed each time [1]
 * @returns number of changes [1]
 * @example changesToClear({ level: copperMgPerLitre(0.2), wanted: copperMgPerLitre(0.01), share: fraction(0.25) }).value // = 11
 */
export function changesToClear({ level, wanted, share }: Clearing): Result<number, Problem> {
  const enough = wanted + levelTolerance;
  if (level <= enough) return ok(0);
  if (share >= 1) return ok(1);
  // log1p, because 1 − share of a very small share is 1 in binary.
  const logLeft = Math.log1p(-share);
  const estimate = Math.max(1, Math.ceil(Math.log(enough / level) / logLeft));
  if (!Number.isSafeInteger(estimate + 1)) return refuse({ code: 'answer-too-large' });
  const reached = (n: number): boolean => level * Math.exp(n * logLeft) <= enough;
  // The logarithm may be off in its last bits, so the whole numbers beside it are tried.
  if (reached(estimate - 1)) return ok(estimate - 1);
  return ok(reached(estimate) ? estimate : estimate + 1);
}
