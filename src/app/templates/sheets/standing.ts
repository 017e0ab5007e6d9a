import type { Condition } from '../templatePlan.js';

/** The tone of a status: below, in band, above. The word stands in the cell. */
export function standing(column: string, first: number, last: number): Condition {
  const cell = `$${column}${first}`;
  return {
    range: `${column}${first}:${column}${last}`,
    rules: [
      { when: `${cell}="below"`, tone: 'low' },
      { when: `${cell}="in band"`, tone: 'inside' },
      { when: `${cell}="above"`, tone: 'high' },
    ],
  };
}
