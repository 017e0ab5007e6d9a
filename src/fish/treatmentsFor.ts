import type { Problem } from '../result/problem.js';
import { ok, type Result } from '../result/result.js';
import { conditionNamed } from './conditionNamed.js';
import type { Treatment } from './treatment.js';
import { treatments } from './treatments.js';

/** What is known to help with a condition, and what copper does to it. The last line is that a veterinarian decides. */
export function treatmentsFor(condition: string): Result<readonly Treatment[], Problem> {
  const found = conditionNamed(condition);
  if (!found.ok) return found;
  return ok(treatments.filter((treatment) => treatment.condition === found.value.key));
}
