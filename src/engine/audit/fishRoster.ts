import { fishCount } from '../fish/fishCount.js';
import type { FishGroup } from '../fish/fishGroup.js';
import { nameWords } from '../fish/nameWords.js';
import { headingsOf } from '../log/headings/readHeadings.js';
import { cardFish } from '../rules/cardFish.js';
import { deathRows, type DeathRow } from '../rules/deathRows.js';
import { lotNames } from '../rules/lotNames.js';
import type { Treatment } from '../rules/treatment.js';
import { departFish, type Leaving, type Departure, type RosterFish } from './departFish.js';

/**
 * Every fish or group of a treatment with what became of it: those of the card first, then those that came in, in time
 * order.
 *
 * @param treatment log and card
 * @returns groups, those that left included
 */
export function fishRoster(treatment: Treatment): readonly RosterFish[] {
  const { log, card } = treatment;
  const { 'fish in': fishIn, 'fish out': fishOut } = log.texts;
  const lotOf = lotNames(log);
  const died = new Map(deathRows(treatment).map((row) => [row.entry, row]));
  const usual = departureOf(headingsOf(log.headings, 'fish out')[0]?.text ?? '', 'out') ?? 'out';
  const roster = cardFish(log, card).map((group) => newFish(group, { arrived: card.arrived, row: null, lot: '' }));
  for (let entry = 0; entry < log.count; entry++) {
    const into = fishIn?.[entry] ?? '';
    const out = fishOut?.[entry] ?? '';
    const deaths = died.get(entry);
    if (into === '' && out === '' && deaths === undefined) continue;
    const at = { when: log.when[entry] ?? NaN, row: log.row[entry] ?? 0, lot: lotOf(entry) };
    if (into !== '') for (const group of fishCount(into, 'fish in').groups) roster.push(arrival(group, at));
    if (out !== '') {
      for (const group of fishCount(out, 'fish out').groups) {
        const how = departureOf(group.written, usual);
        if (how !== null) departFish(roster, leaving(group, at, how));
      }
    }
    if (deaths !== undefined) takeDead(roster, deaths, at);
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

function newFish(group: FishGroup, came: Pick<RosterFish, 'arrived' | 'row' | 'lot'>): RosterFish {
  const { written, name, count, exact, doa, numbered } = group;
  return {
    ...came,
    written: name === '' && numbered ? `${count} fish` : written,
    words: nameWords(name),
    count,
    exact,
    doa,
    remaining: count,
    left: null,
    events: [],
  };
}

function takeDead(roster: readonly RosterFish[], { groups, count, onArrival }: DeathRow, at: At): void {
  for (const group of groups) {
    const isDoa = onArrival >= count || group.doa >= group.count;
    // Fewer than the cell says: the rest is told where they came in.
    const open = { ...group, count: Math.min(group.count, count) };
    if (open.count > 0 || group.all) departFish(roster, leaving(open, at, isDoa ? 'dead on arrival' : 'died'));
  }
}

function leaving(group: FishGroup, { when, row, lot }: At, how: Departure): Leaving {
  const { name, count, all, numbered, exact } = group;
  // "chromis" in a column of fish that leave is the group, "chromis" in one of deaths is a fish.
  const isDeath = how === 'died' || how === 'dead on arrival';
  const whole = all || (!numbered && name !== '' && (!isDeath || !exact));
  return { words: nameWords(name), count, whole, when, row, lot, how };
}

/** null: a death, which is counted where deaths are. */
function departureOf(text: string, usual: Departure): Departure | null {
  if (/\bsold\b/i.test(text)) return 'sold';
  if (/\b(?:dead|died|dies|doa)\b/i.test(text)) return null;
  return /\bmoved?\b|\btransfer|\bto\b|→|->/i.test(text) ? 'moved' : usual;
}
