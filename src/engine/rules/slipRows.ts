import { foundBy } from './foundBy.js';
import type { Finder } from './rule.js';
import { swappedRows } from './swappedRows.js';
import { swappedSystems } from './swappedSystems.js';
import type { Treatment } from './treatment.js';
import { unitSlip } from './unitSlip.js';

/** The rules that name a reading as a slip of the pen. */
export const slipRules: readonly Finder[] = [swappedRows, unitSlip, swappedSystems];

const known = new WeakMap<Treatment, ReadonlySet<number>>();

/** The rows whose reading is named as a slip of the pen, whatever other rules have found. */
export function slipRows(treatment: Treatment): ReadonlySet<number> {
  const before = known.get(treatment);
  if (before !== undefined) return before;
  const rows = new Set<number>();
  for (const rule of slipRules) for (const { row } of foundBy(rule, treatment)) if (row !== null) rows.add(row);
  known.set(treatment, rows);
  return rows;
}
