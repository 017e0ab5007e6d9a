import type { Rule } from './rule.js';
import { openHold } from './openHold.js';

/**
 * A copper cell that cannot be read: warning. Inside a hold the answer is given both ways, with the cell below the band
 * and inside it.
 */
export const unreadableCopper: Rule = (treatment, named) => {
  const faults = treatment.log.faults.filter(({ kind, row }) => kind === 'copper' && !named.has(row));
  if (faults.length === 0) return [];
  const open = openHold(treatment);
  const inHold = new Set(open?.unreadable.map(({ row }) => row));
  return faults.map(({ row, when, problem }) => ({
    code: 'unreadable-copper',
    severity: 'warning',
    when: Number.isNaN(when) ? null : when,
    row,
    source: 'Practice',
    problem,
    counts: open !== null && inHold.has(row) ? { ifBelow: open.ifBelow, ifHeld: open.ifHeld } : null,
  }));
};
