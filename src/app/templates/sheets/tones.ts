import type { ColumnTones } from '../plan/rowConditions.js';
import type { ToneRule } from '../plan/templatePlan.js';

/** Below, in band, above: the word stands in the cell that is named. */
export function standingRules(cell: string): ToneRule[] {
  return [
    { when: `${cell}="below"`, tone: 'low' },
    { when: `${cell}="in band"`, tone: 'inside' },
    { when: `${cell}="above"`, tone: 'high' },
  ];
}

/** The tones of a column `Status`. */
export const standingTones: ColumnTones = { on: 'Status', rules: standingRules('{$Status}') };
