import type { Condition } from './condition.js';
import type { Treatment } from './treatment.js';
import { treatments } from './treatments.js';

/** What is known to help with a condition, and what copper does to it. The last line is that a veterinarian decides. */
export function treatmentsFor({ key }: Condition): readonly Treatment[] {
  return treatments.filter(({ condition }) => condition === key);
}
