import { steadyLevels, usualLossRate } from '../rules/steady/steadyLevels.js';
import type { Treatment } from '../rules/treatment.js';

/** This tank's loss: what its readings show, drawn toward the usual loss of the form as far as they show little. */
export function tankLoss(treatment: Treatment): { rate: number; spread: number } {
  const usual = usualLossRate(treatment.card);
  const usualSpread = Math.max(usual, leastLossSpread);
  const seen = steadyLevels(treatment)?.rate ?? 0;
  const seenSpread = treatment.levels?.lossRateSpread ?? 0;
  if (seenSpread <= 0) return { rate: usual, spread: usualSpread };
  const weight = usualSpread ** 2 / (usualSpread ** 2 + seenSpread ** 2);
  return { rate: usual + weight * (seen - usual), spread: Math.sqrt(weight) * seenSpread };
}

/** Where a form loses next to nothing. [1/day] */
const leastLossSpread = 0.003;
