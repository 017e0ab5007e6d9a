import { signsAfterArrival } from './signsAfterArrival.js';
import { daily, type Rule, type Found, type FindingWords } from './rule.js';
import { cut } from './phrases.js';
import * as limits from '../limits/limits.js';
import type { Treatment } from './treatment.js';

interface FirstSigns {
  readonly code: 'first-signs';
  readonly text: string;
}

/**
 * The first signs of a treatment: test ammonia, oxygen and copper before anything else, as velvet, flukes and ammonia
 * look the same.
 *
 * Source: [Practice].
 */
export const fishSignsFirst: Rule<FirstSigns> = {
  about: 'the first signs of a treatment',
  codes: { 'first-signs': ['note'] },
  sources: ['Practice'],
  needs: [['signs', 'note']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|signs', 2.25, '2.25|lethargic'), finds: ['note 3 first-signs'] },
    { log: daily('Cu|signs', 2.25, '2.25|eating well'), finds: [] },
  ],
};

function find(treatment: Treatment): readonly Found<FirstSigns>[] {
  if (!treatment.signs.some(({ reading }) => reading === 'sign')) return [];
  const first = signsAfterArrival(treatment).find(({ step, reading }) => step === 'test first' && reading === 'sign');
  if (first === undefined) return [];
  const { text, when, row } = first;
  return [{ code: 'first-signs', text, severity: 'note', when, row, source: 'Practice' }];
}

function words({ text }: FirstSigns): FindingWords {
  return {
    finding:
      `"${cut(text)}": test ammonia, oxygen and copper first; if all three are as they should be and the fish has been ` +
      `in over ${limits.settledIn.value} h, lower the level until it eats, which breaks the hold.`,
    why: 'Velvet, flukes and ammonia look the same as trouble with copper.',
  };
}
