import { matchedNames, type MatchedName } from './matchedNames.js';
import { misspeltNames } from './misspeltNames.js';
import { nameWords } from './nameWords.js';
import { nearestNames } from './nearestNames.js';
import type { ListedName } from './nameIndex.js';
import { toleranceAdvice, type ToleranceEntry } from './toleranceEntry.js';
import { scientificKeys, speciesByInitial, toleranceIndex } from './toleranceIndex.js';

/** What the list says of one name. */
export type Tolerance =
  | {
      readonly kind: 'listed';
      /** The strictest entry that fits. */
      readonly entry: ToleranceEntry;
      /** By its own name, by a genus's initial, or by words within it. */
      readonly by: 'name' | 'initial' | 'words';
      /** Every entry that fits, when more than one does. */
      readonly fits: readonly ToleranceEntry[];
    }
  | {
      readonly kind: 'not listed';
      /** Listed names to choose from, as the list spells them. */
      readonly nearest: readonly string[];
    }
  | { readonly kind: 'too long' };

/** More letters than any name has: a sentence, in which a word at the end may matter. */
const longestName = 80;
const mostWords = 16;
const offered = 3;

/**
 * What the list says of a fish by trade or scientific name, genus, family or group. Where several entries fit, the
 * strictest counts. A name with a slip in it is never guessed: the nearest listed names are offered.
 */
export function tolerance(name: string): Tolerance {
  if (name.length > longestName) return { kind: 'too long' };
  const words = nameWords(name);
  if (words.length > mostWords) return { kind: 'too long' };
  const abbreviated = byInitial(words);
  if (abbreviated !== undefined) return abbreviated;
  const matched = matchedNames(words, toleranceIndex);
  const whole = matched.find(({ first, last }) => first === 0 && last === words.length - 1);
  if (whole !== undefined) return strictest(whole.name.entries, 'name');
  const slips = misspeltNames(words, matched, toleranceIndex);
  const entries = matched.filter((found) => counts(found, words)).flatMap((found) => found.name.entries);
  // A slip may hide a stricter name, but nothing a slip hides can soften what is already to be kept out of copper.
  const holds = slips.length === 0 ? entries : entries.filter(({ advice }) => advice === 'never' || advice === 'avoid');
  if (holds.length > 0) return strictest(entries, 'words');
  return { kind: 'not listed', nearest: nearest(words, slips) };
}

function byInitial(words: readonly string[]): Tolerance | undefined {
  const [genus = '', species = ''] = words;
  if (words.length !== 2 || genus.length !== 1) return undefined;
  const found = speciesByInitial.get(`${genus} ${species}`);
  if (found === undefined) return undefined;
  const entries = [...new Set(found.map(({ entry }) => entry))];
  const [only, ...others] = entries;
  if (only === undefined || others.length > 0)
    return { kind: 'not listed', nearest: found.map(({ name }) => name).slice(0, offered) };
  return { kind: 'listed', entry: only, by: 'initial', fits: [] };
}

/**
 * Whether a name within a longer one says what fish it is. The gentlest advice needs the last word, which in English is
 * the noun ("comet goldfish" is no comet), or a scientific name; any other counts wherever it stands.
 */
function counts(found: MatchedName<ToleranceEntry>, words: readonly string[]): boolean {
  if (found.last === words.length - 1 || scientificKeys.has(found.name.key)) return true;
  return found.name.entries.some(({ advice }) => advice !== 'usual care');
}

function strictest(entries: readonly ToleranceEntry[], by: 'name' | 'words'): Tolerance {
  const fits = [...new Set(entries)].sort((a, b) => rank(a) - rank(b));
  const [entry] = fits;
  if (entry === undefined) throw new Error('no entry to choose from');
  return { kind: 'listed', entry, by, fits: fits.length > 1 ? fits : [] };
}

function rank({ advice }: ToleranceEntry): number {
  return toleranceAdvice.indexOf(advice);
}

function nearest(words: readonly string[], slips: readonly ListedName<ToleranceEntry>[]): readonly string[] {
  if (words.length === 0) return [];
  const names = new Map<ToleranceEntry | undefined, string>();
  for (const { entries, spelling } of [...slips, ...nearestNames(words, toleranceIndex, offered)]) {
    if (!names.has(entries[0])) names.set(entries[0], spelling);
  }
  return [...names.values()].slice(0, offered);
}

/** A name as it was given, and what the list says of it. */
export interface FishTolerance {
  readonly name: string;
  readonly tolerance: Tolerance;
}

/** What the list says of every name, in the order given. */
export function tolerancesOf(names: readonly string[]): readonly FishTolerance[] {
  // A column of livestock repeats its names; each is looked up once.
  const known = new Map<string, Tolerance>();
  return names.map((name) => {
    const found = known.get(name) ?? tolerance(name);
    known.set(name, found);
    return { name, tolerance: found };
  });
}
