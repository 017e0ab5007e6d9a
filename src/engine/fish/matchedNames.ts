import type { ListedName, NameIndex } from './nameIndex.js';

/** A listed name found in a row of words: words `first` to `last`. */
export interface MatchedName<Entry> {
  readonly first: number;
  readonly last: number;
  readonly name: ListedName<Entry>;
}

/** The listed names that stand in a row of words. One inside a longer one does not count: a coral beauty is no coral. */
export function matchedNames<Entry>(words: readonly string[], index: NameIndex<Entry>): readonly MatchedName<Entry>[] {
  const found: MatchedName<Entry>[] = [];
  let reached = -1;
  for (let first = 0; first < words.length; first++) {
    const longest = longestFrom(words, first, index);
    // What ends no later than an earlier, longer name lies inside it.
    if (longest === undefined || longest.last <= reached) continue;
    reached = longest.last;
    found.push(longest);
  }
  return found;
}

function longestFrom<Entry>(
  words: readonly string[],
  first: number,
  index: NameIndex<Entry>,
): MatchedName<Entry> | undefined {
  // One word may be written as two, so look one word further than any listed name has.
  for (let end = Math.min(words.length, first + index.mostWords + 1); end > first; end--) {
    const name = index.byKey.get(words.slice(first, end).join(''));
    if (name !== undefined) return { first, last: end - 1, name };
  }
  return undefined;
}
