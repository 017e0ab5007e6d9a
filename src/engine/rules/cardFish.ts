import { fishCount } from '../fish/fishCount.js';
import type { FishGroup } from '../fish/fishGroup.js';
import { nameWords } from '../fish/nameWords.js';
import type { Card } from '../log/card.js';
import type { Log } from '../log/table/log.js';

/**
 * The fish that the card lists and no row brings in. One that also comes in under the same name, on the day of the
 * card's arrival or where the card names none, is one fish: its row is its arrival.
 *
 * @param log rows that may bring fish in
 * @param card list of fish
 * @returns groups in the order of the card
 */
export function cardFish(log: Log, card: Card): readonly FishGroup[] {
  const listed = card.fish.flatMap((text) => fishCount(text, 'fish in').groups);
  const fishIn = log.texts['fish in'];
  if (fishIn === null || listed.length === 0) return listed;
  const coming = new Set<string>();
  for (let index = 0; index < log.count; index++) {
    const text = fishIn[index] ?? '';
    const isOther = card.arrived !== null && Math.floor(log.when[index] ?? NaN) !== Math.floor(card.arrived);
    if (text === '' || isOther) continue;
    for (const { name } of fishCount(text, 'fish in').groups) coming.add(nameKey(name));
  }
  return listed.filter(({ name }) => name === '' || !coming.has(nameKey(name)));
}

function nameKey(name: string): string {
  return nameWords(name).join(' ');
}
