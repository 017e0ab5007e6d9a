import { letterSet } from './letterSet.js';
import { nameWords } from './nameWords.js';

/** One of the names of an entry. */
export interface ListedName<Entry> {
  /** As the list spells it. */
  readonly spelling: string;
  readonly words: readonly string[];
  /** The words joined: "sea horse" is "seahorse". */
  readonly key: string;
  readonly letters: number;
  /** Whose name it is: one entry, or more where a name has two meanings. */
  readonly entries: readonly Entry[];
}

/** A word of listed names, and the names it stands in. */
interface ListedWord<Entry> {
  readonly word: string;
  readonly letters: number;
  readonly names: readonly ListedName<Entry>[];
}

/** A list of things that go by several names, prepared for looking names up. */
export interface NameIndex<Entry> {
  readonly byKey: ReadonlyMap<string, ListedName<Entry>>;
  readonly byWord: ReadonlyMap<string, ListedWord<Entry>>;
  /** The most words that a name has. */
  readonly mostWords: number;
}

/** Prepares a list for `matchedNames`, `misspeltNames` and `nearestNames`. */
export function nameIndex<Entry>(
  entries: readonly Entry[],
  namesOf: (entry: Entry) => readonly string[],
): NameIndex<Entry> {
  const byKey = new Map<string, ListedName<Entry>>();
  for (const entry of entries) {
    for (const spelling of namesOf(entry)) {
      const words = nameWords(spelling);
      const key = words.join('');
      const known = byKey.get(key) ?? { spelling, words, key, letters: letterSet(key), entries: [] };
      if (!known.entries.includes(entry)) byKey.set(key, { ...known, entries: [...known.entries, entry] });
    }
  }
  const names = [...byKey.values()];
  return { byKey, byWord: wordsOf(names), mostWords: Math.max(...names.map(({ words }) => words.length)) };
}

function wordsOf<Entry>(names: readonly ListedName<Entry>[]): ReadonlyMap<string, ListedWord<Entry>> {
  const byWord = new Map<string, ListedWord<Entry>>();
  for (const name of names) {
    for (const word of new Set(name.words)) {
      const known = byWord.get(word)?.names ?? [];
      byWord.set(word, { word, letters: letterSet(word), names: [...known, name] });
    }
  }
  return byWord;
}
