import { fishCount } from '../fish/fishCount.js';
import { tolerance, type Tolerance } from '../fish/tolerance.js';
import { daily, type Rule, type Found, type FindingWords, type Spoken } from './rule.js';
import { cut } from './phrases.js';
import type { Treatment } from './treatment.js';
import type { ToleranceReason } from '../fish/toleranceEntry.js';

interface CopperIntolerantFish {
  readonly code: 'copper-intolerant-fish';
  /** As the keeper wrote it. */
  readonly fish: string;
  /** The entry of the list that it is read as. */
  readonly listedAs: string;
  readonly advice: 'never' | 'avoid';
  readonly reason: ToleranceReason;
}

/**
 * Fish and other animals that the list says never to treat with copper, or to keep from it, on the card or coming in.
 *
 * Source: that of the list's own entry.
 */
export const copperIntolerantFish: Rule<CopperIntolerantFish> = {
  about: 'fish and other animals that the list says to keep from copper',
  codes: { 'copper-intolerant-fish': ['danger'] },
  sources: ['FishHealthPage', 'HobbyPress2008', 'Memory', 'Practice', 'YanongFA165', 'ZecHadfieldHungerford2017'],
  needs: [['fish in']],
  yieldsTo: [],
  find,
  words,
  examples: [
    { log: daily('Cu|fish in', '0|2 lined seahorse', 2.25), finds: ['danger 2 copper-intolerant-fish'] },
    { log: daily('Cu|fish in', '0|2 ocellaris clownfish', 2.25), finds: [] },
  ],
};

function find({ log, card }: Treatment): readonly Found<CopperIntolerantFish>[] {
  const found: Found<CopperIntolerantFish>[] = [];
  const known = new Map<string, readonly Warned[]>();
  const warnedIn = (text: string): readonly Warned[] => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const warned = fishCount(text, 'fish in').groups.flatMap(({ name }) => warning(name));
    known.set(text, warned);
    return warned;
  };
  for (const fish of card.fish) {
    for (const warned of warnedIn(fish)) found.push({ ...warned, severity: 'danger', when: null, row: null });
  }
  const fishIn = log.texts['fish in'];
  for (let index = 0; fishIn !== null && index < log.count; index++) {
    const text = fishIn[index] ?? '';
    if (text === '') continue;
    const at = { when: log.when[index] ?? null, row: log.row[index] ?? null };
    for (const warned of warnedIn(text)) found.push({ ...warned, severity: 'danger', ...at });
  }
  return found;
}

function words({ fish, listedAs, advice, reason }: CopperIntolerantFish, spoken: Spoken): FindingWords {
  return {
    finding:
      `${cut(fish)}${isSameName(fish, listedAs) ? '' : ` (read as ${listedAs})`}: advice "${advice}" for copper; take ` +
      `${advice === 'never' ? 'it' : 'this fish'} out of copper water and use another treatment.`,
    why: spoken.toleranceReason(reason),
  };
}

function isSameName(written: string, listed: string): boolean {
  const key = (name: string): string =>
    name
      .toLowerCase()
      .replace(/[^\p{L}]/gu, '')
      .replace(/s$/, '');
  return key(written) === key(listed);
}

type Warned = Omit<Found<CopperIntolerantFish>, 'severity' | 'when' | 'row'>;

function warning(name: string): readonly Warned[] {
  const said: Tolerance | null = name === '' ? null : tolerance(name);
  if (said?.kind !== 'listed') return [];
  const { advice, reason, source, name: listedAs } = said.entry;
  if (advice !== 'never' && advice !== 'avoid') return [];
  return [{ code: 'copper-intolerant-fish', fish: name, listedAs, advice, reason, source }];
}
