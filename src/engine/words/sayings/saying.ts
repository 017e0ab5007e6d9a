import type { FactKind, Polarity } from '../fact.js';

/** A way of saying one thing. */
export interface Saying {
  readonly kind: FactKind;
  /** In small letters. */
  readonly words: RegExp;
  /** The same words, to ask whether they are there at all: that is cheaper. */
  readonly any: RegExp;
  /** What the words alone say; undefined: that it is so now. */
  readonly polarity?: Polarity;
  /** Words of the same clause with which it says something else. */
  readonly unless?: RegExp;
  /** Words of the same sentence without which it says nothing. */
  readonly beside?: RegExp;
  /** Whether a "no" before it belongs to the words and denies nothing. */
  readonly ownsNegation?: true;
}

/** Sayings of one kind, longer ones first where they share words. */
export function said(kind: FactKind, words: string, more: Omit<Saying, 'kind' | 'words' | 'any'> = {}): Saying {
  const source = words.replace(/\s*\n\s*/g, '');
  return { kind, words: new RegExp(source, 'g'), any: new RegExp(source), ...more };
}
