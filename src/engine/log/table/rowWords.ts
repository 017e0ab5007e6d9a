import type { Log } from './log.js';

/** What a row's text says about the order of things and the new water. */
interface RowWords {
  readonly afterDose: boolean;
  readonly afterChange: boolean;
  /** The new water was brought to the tank's level. */
  readonly matched: boolean;
}

const nothing: RowWords = { afterDose: false, afterChange: false, matched: false };

const telling = /\b(?:after|post|matched|premix|pre-mix|same level|copper in (?:the )?new water|dosed new water)/i;
const afterDose = /\b(?:after|post)[- ](?:the )?(?:\w+ )?dos(?:e|es|ing)\b/i;
const afterChange = /\b(?:after|post)[- ](?:the )?(?:p?wc|(?:water )?change)\b/i;
const matched = /\b(?:matched|pre-?mix(?:ed)?|same level|copper in (?:the )?new water|dosed new water)\b/i;
/** "forgot copper in new water", "no copper in the new water", "not matched". */
const notMatched =
  /\b(?:forg[oe]t(?:ten)?|no|not|never|without|missed|skipped|left out|non)\b[^.;,]*\b(?:copper|cu|match(?:ed)?|pre-?mix(?:ed)?|dosed)\b|\b(?:un|non-?)matched\b|\b(?:copper|cu) (?:forgotten|missed|left out)\b/i;

/** Reads the notes and signs of a log's rows for "after dose", "after WC", "matched" and "premixed". */
export function rowWords({ texts: { note, signs } }: Log): (index: number) => RowWords {
  // The same words come again and again in a log.
  const known = new Map<string, RowWords>();
  const wordsOf = (text: string): RowWords => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const words = wordsIn(text);
    known.set(text, words);
    return words;
  };
  return (index) => {
    const text = note?.[index] ?? '';
    const sign = signs?.[index] ?? '';
    if (text === '' && sign === '') return nothing;
    return wordsOf(sign === '' ? text : text === '' ? sign : `${text}; ${sign}`);
  };
}

function wordsIn(said: string): RowWords {
  if (!telling.test(said)) return nothing;
  return {
    afterDose: afterDose.test(said),
    afterChange: afterChange.test(said),
    matched: matched.test(said) && !notMatched.test(said),
  };
}
