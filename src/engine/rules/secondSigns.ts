import type { Rule } from './rule.js';
import { signsAfterArrival } from './signsAfterArrival.js';

/**
 * Signs a second time, after a recorded recovery or three clear days: stop copper, use another treatment.
 *
 * Source: [Practice].
 */
export const secondSigns: Rule = (treatment) => {
  if (!treatment.signs.some(({ reading }) => reading === 'sign')) return [];
  const rows = signsAfterArrival(treatment);
  const again = rows.find(({ step }) => step === 'stop copper');
  if (again === undefined) return [];
  const first = rows.find(({ step }) => step === 'test first');
  return [
    {
      code: 'second-signs',
      text: again.text,
      first: first === undefined ? null : { row: first.row, when: first.when },
      severity: 'danger',
      when: again.when,
      row: again.row,
      source: 'Practice',
    },
  ];
};
