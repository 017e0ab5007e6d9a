import { fishCount } from '../fish/fishCount.js';
import type { FishGroup } from '../fish/fishGroup.js';
import { nameWords } from '../fish/nameWords.js';
import { headingsOf } from '../log/headings/readHeadings.js';
import { lotNames } from '../rules/lotNames.js';
import type { Treatment } from '../rules/treatment.js';
import { departFish, type Leaving } from './departFish.js';
import type { Departure, RosterFish } from './rosterFish.js';

/**
 * Every fish or group of a treatment with what became of it: those of the card first, then those that came in, in time
 * order. A fish of the card that also comes in, under the same name, is one fish: its row gives the arrival.
 *
 * @param treatment log and card
 * @returns groups, those that left included
 */
export function fishRoster(treatment: Treatment): readonly RosterFish[] {
  const { log } = treatment;
  const { 'fish in': fishIn, 'fish out': fishOut, dead } = log.texts;
  const lotOf = lotNames(log);
  const roster = cardFish(treatment);
  const usual = { out: departureOf(headingText(treatment, 'fish out'), 'out'), dead: deathOf(treatment) };
  for (let index = 0; index < log.count; index++) {
    const into = fishIn?.[index] ?? '';
    const out = fishOut?.[index] ?? '';
    const died = dead?.[index] ?? '';
    if (into === '' && out === '' && died === '') continue;
    const at = { when: log.when[index] ?? NaN, row: log.row[index] ?? 0, lot: lotOf(index) };
    if (into !== '') for (const group of fishCount(into, 'fish in').groups) roster.push(arrival(group, at));
    const leave = (text: string, column: 'fish out' | 'dead', how: (text: string) => Departure): void => {
      for (const group of fishCount(text, column).groups) departFish(roster, leaving(group, at, how(group.written)));
    };
    if (out !== '') leave(out, 'fish out', (text) => departureOf(text, usual.out));
    if (died !== '') leave(died, 'dead', (text) => (/\bdoa\b|on arrival/i.test(text) ? 'dead on arrival' : usual.dead));
  }
  return roster;
}

interface At {
  readonly when: number;
  readonly row: number;
  readonly lot: string;
}

function arrival(group: FishGroup, { when, row, lot }: At): RosterFish {
  const fish = newFish(group, { arrived: when, row, lot });
  if (group.doa > 0) {
    fish.events.push({ how: 'dead on arrival', count: group.doa, when, row, unclear: false });
    fish.remaining -= group.doa;
    if (fish.remaining <= 0) fish.left = when;
  }
  return fish;
}

function newFish(
  group: FishGroup,
  { arrived, row, lot }: { arrived: number | null; row: number | null; lot: string },
): RosterFish {
  const { written, name, count, exact, doa } = group;
  return {
    written: name === '' && group.numbered ? `${count} fish` : written,
    words: nameWords(name),
    lot,
    row,
    arrived,
    count,
    exact,
    doa,
    remaining: count,
    left: null,
    events: [],
  };
}

function cardFish({ card, log }: Treatment): RosterFish[] {
  const coming = new Map<string, number[]>();
  const fishIn = log.texts['fish in'];
  for (let index = 0; fishIn !== null && index < log.count && card.fish.length > 0; index++) {
    for (const { name } of fishCount(fishIn[index] ?? '', 'fish in').groups) {
      const key = nameWords(name).join(' ');
      coming.set(key, [...(coming.get(key) ?? []), log.when[index] ?? NaN]);
    }
  }
  const { arrived } = card;
  return card.fish
    .flatMap((text) => fishCount(text, 'fish in').groups)
    .map((group) => newFish(group, { arrived, row: null, lot: '' }))
    .filter(({ words }) => {
      const times = words.length === 0 ? [] : (coming.get(words.join(' ')) ?? []);
      return !times.some((when) => arrived === null || Math.floor(when) === Math.floor(arrived));
    });
}

function leaving(group: FishGroup, { when, row, lot }: At, how: Departure): Leaving {
  const { name, count, all, numbered } = group;
  // "chromis" in a column of fish that leave is the group, "chromis" in one of deaths is a fish.
  const whole = all || (!numbered && name !== '' && (how !== 'died' || !group.exact));
  return { words: nameWords(name), count, whole, when, row, lot, how };
}

function departureOf(text: string, usual: Departure): Departure {
  if (/\bsold\b/i.test(text)) return 'sold';
  if (/\bdoa\b/i.test(text)) return 'dead on arrival';
  if (/\b(?:dead|died|death)\b/i.test(text)) return 'died';
  return /\bmoved?\b|\btransfer|\bto\b|→|->/i.test(text) ? 'moved' : usual;
}

function deathOf(treatment: Treatment): Departure {
  return /\bdoa\b/i.test(headingText(treatment, 'dead')) ? 'dead on arrival' : 'died';
}

function headingText({ log }: Treatment, kind: 'fish out' | 'dead'): string {
  return headingsOf(log.headings, kind)[0]?.text ?? '';
}
