import { distance } from 'fastest-levenshtein';
import { letterSet, lettersApart } from './letterSet.js';
import type { MatchedName } from './matchedNames.js';
import type { ListedName, NameIndex } from './nameIndex.js';

const mostSlips = 3;

/**
 * The listed names that some of the words would be but for a slip, one letter in four of a word and three at most; the
 * names of the most words first. Words that are part of a matched name are not slips by themselves.
 */
export function misspeltNames<Entry>(
  words: readonly string[],
  matched: readonly MatchedName<Entry>[],
  index: NameIndex<Entry>,
): readonly ListedName<Entry>[] {
  const found = new Set<ListedName<Entry>>();
  words.forEach((word, at) => {
    if (matched.some(({ first, last }) => first <= at && at <= last)) return;
    const letters = letterSet(word);
    for (const listed of index.byWord.values()) {
      if (Math.abs(word.length - listed.word.length) > mostSlips) continue;
      if (lettersApart(letters, listed.letters) > mostSlips || !isSlip(word, listed.word)) continue;
      for (const name of listed.names) if (stands(name.words, listed.word, words, at)) found.add(name);
    }
  });
  return [...found].sort((a, b) => b.words.length - a.words.length);
}

function isSlip(word: string, listed: string): boolean {
  const most = Math.min(mostSlips, Math.floor(Math.max(word.length, listed.length) / 4));
  if (most === 0 || Math.abs(word.length - listed.length) > most || word === listed) return false;
  return distance(word, listed) <= most;
}

/** Whether a listed name stands among the words, with `near` in the place of the word at `at`. */
function stands(name: readonly string[], near: string, words: readonly string[], at: number): boolean {
  const from = at - name.indexOf(near);
  return name.every((part, i) => from + i === at || part === words[from + i] || isSlip(words[from + i] ?? '', part));
}
