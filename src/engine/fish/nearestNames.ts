import { distance } from 'fastest-levenshtein';
import { letterSet, lettersApart } from './letterSet.js';
import type { ListedName, NameIndex } from './nameIndex.js';

/** Letters of a text that are compared; no listed name is longer. */
const compared = 40;

/**
 * The listed names nearest to some words, one for an entry, the nearest first: the letters that differ, less those of
 * the words they share. None that has no letter in common.
 */
export function nearestNames<Entry>(
  words: readonly string[],
  index: NameIndex<Entry>,
  most: number,
): readonly ListedName<Entry>[] {
  const text = words.join('').slice(0, compared);
  const letters = letterSet(text);
  const shared = sharedLetters(words, index);
  let kept: { readonly name: ListedName<Entry>; readonly off: number }[] = [];
  for (const name of index.byKey.values()) {
    const furthest = kept[most - 1]?.off ?? Infinity;
    const bonus = shared.get(name) ?? 0;
    const least = Math.max(Math.abs(text.length - name.key.length), lettersApart(letters, name.letters));
    if (least - bonus >= furthest) continue;
    const changed = distance(text, name.key);
    if (changed >= Math.max(text.length, name.key.length)) continue;
    const off = changed - bonus;
    const same = kept.find((other) => other.name.entries[0] === name.entries[0]);
    if (off >= furthest || (same !== undefined && same.off <= off)) continue;
    kept = [...kept.filter((other) => other !== same), { name, off }].sort((a, b) => a.off - b.off).slice(0, most);
  }
  return kept.map(({ name }) => name);
}

function sharedLetters<Entry>(
  words: readonly string[],
  index: NameIndex<Entry>,
): ReadonlyMap<ListedName<Entry>, number> {
  const letters = new Map<ListedName<Entry>, number>();
  for (const word of new Set(words)) {
    for (const name of index.byWord.get(word)?.names ?? []) letters.set(name, (letters.get(name) ?? 0) + word.length);
  }
  return letters;
}
