import type { Rule } from '../plan/templatePlan.js';

function choose(...values: string[]): Rule {
  const last = values.at(-1) ?? '';
  return { allows: { kind: 'list', values }, refusal: `Choose ${values.slice(0, -1).join(', ')} or ${last}.` };
}

/** What a cell of a card takes, and what is said when something else is written into it. */
export const cardRules = {
  choose,
  forms: choose('sulfate', 'amine', 'chelated'),
  paces: choose('gradual', 'sensitive', 'urgent'),
  anything: { allows: { kind: 'anything' }, refusal: '' },
  between: (from: number, to: number): Rule => ({
    allows: { kind: 'decimal', from, to },
    refusal: `Write a number from ${from} to ${to}, or leave the cell empty.`,
  }),
} as const;
