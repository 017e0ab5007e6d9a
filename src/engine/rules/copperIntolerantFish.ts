import { fishCount } from '../fish/fishCount.js';
import { tolerance, type Tolerance } from '../fish/tolerance.js';
import type { Finding } from './finding.js';
import type { Rule } from './rule.js';

/**
 * Fish and other animals that the list says never to treat with copper, or to keep from it, on the card or coming in.
 *
 * Source: that of the list's own entry.
 */
export const copperIntolerantFish: Rule = ({ log, card }) => {
  const found: Finding[] = [];
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
};

type Warned = Omit<Extract<Finding, { readonly code: 'copper-intolerant-fish' }>, 'severity' | 'when' | 'row'>;

function warning(name: string): readonly Warned[] {
  const said: Tolerance | null = name === '' ? null : tolerance(name);
  if (said?.kind !== 'listed') return [];
  const { advice, reason, source, name: listedAs } = said.entry;
  if (advice !== 'never' && advice !== 'avoid') return [];
  return [{ code: 'copper-intolerant-fish', fish: name, listedAs, advice, reason, source }];
}
