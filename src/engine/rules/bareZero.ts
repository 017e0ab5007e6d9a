import { openHold } from './openHold.js';
import type { Rule } from './rule.js';

/**
 * A bare 0 inside a hold, where no empty cell of the log shows that this host tells the two apart: an empty cell or a
 * reading? A warning where the answer hangs on it.
 */
export const bareZero: Rule = (treatment) => {
  const open = treatment.readings.zeroRows.length === 0 ? null : openHold(treatment);
  if (open === null || open.row === null || !open.zeros.includes(open.row)) return [];
  const { row, ifBelow, ifHeld } = open;
  const reading = treatment.readings.row.indexOf(row);
  const at = { when: treatment.readings.when[reading] ?? null, row, source: 'Practice' } as const;
  return [{ ...at, code: 'bare-zero', severity: 'warning', ifZero: ifBelow, ifUntested: ifHeld }];
};
