import { nameIndex, type NameIndex } from './nameIndex.js';
import { nameWords } from './nameWords.js';
import type { ToleranceEntry } from './toleranceEntry.js';
import { tolerances } from './tolerances.js';

/** The list by every name in it. */
export const toleranceIndex: NameIndex<ToleranceEntry> = nameIndex(tolerances, ({ trade, scientific }) => [
  ...trade,
  ...scientific,
]);

/** The keys of scientific names, for which the first word, the genus, carries the meaning. */
export const scientificKeys: ReadonlySet<string> = new Set(
  tolerances.flatMap(({ scientific }) => scientific.map((name) => nameWords(name).join(''))),
);

/** Species by the genus's initial and the species' own word: "c bispinosa". Two species of one spelling stand side by side. */
export const speciesByInitial: ReadonlyMap<string, readonly Species[]> = byInitial();

interface Species {
  readonly name: string;
  readonly entry: ToleranceEntry;
}

function byInitial(): ReadonlyMap<string, readonly Species[]> {
  const found = new Map<string, Species[]>();
  for (const entry of tolerances) {
    for (const name of entry.scientific) {
      const [genus = '', species, further] = nameWords(name);
      if (species === undefined || further !== undefined) continue;
      const initial = `${genus.charAt(0)} ${species}`;
      found.set(initial, [...(found.get(initial) ?? []), { name, entry }]);
    }
  }
  return found;
}
