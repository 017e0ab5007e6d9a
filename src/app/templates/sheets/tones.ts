import type { ColumnTones, ToneRule } from '../plan/index.js';

type Tone = ToneRule['tone'];

/** The tones of a cell by the word in it, so that colour never says more than the word. */
export function wordRules(cell: string, words: Readonly<Record<string, Tone>>): ToneRule[] {
  return Object.entries(words).map(([word, tone]) => ({ when: `${cell}="${word}"`, tone }));
}

/** The tones of a column by its words. */
export function wordTones(on: string, words: Readonly<Record<string, Tone>>): ColumnTones {
  return { on, rules: wordRules(`{$${on}}`, words) };
}

/** The words of a column `Status`. */
export const standingWords = { below: 'low', 'in band': 'inside', above: 'high' } as const;
