import type { Rule } from './rule.js';
import { signsAfterArrival } from './signsAfterArrival.js';

/**
 * The first signs of a treatment: test ammonia, oxygen and copper before anything else, as velvet, flukes and ammonia
 * look the same.
 *
 * Source: [Practice].
 */
export const fishSignsFirst: Rule = (treatment) => {
  if (!treatment.signs.some(({ reading }) => reading === 'sign')) return [];
  const first = signsAfterArrival(treatment).find(({ step, reading }) => step === 'test first' && reading === 'sign');
  if (first === undefined) return [];
  const { text, when, row } = first;
  return [{ code: 'first-signs', text, severity: 'note', when, row, source: 'Practice' }];
};
