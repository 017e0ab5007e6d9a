/** How fish leave a system. */
export type Departure = 'died' | 'dead on arrival' | 'moved' | 'sold' | 'out';

/** What befell some of a group. */
export interface FishEvent {
  readonly how: Departure;
  readonly count: number;
  /** [serial day] */
  readonly when: number;
  readonly row: number;
  /** The log does not say which of several groups it was. */
  readonly unclear: boolean;
}

/** Fish of one kind that came in together. */
export interface RosterFish {
  /** As the keeper wrote it. */
  readonly written: string;
  /** The name in the form in which names are compared. */
  readonly words: readonly string[];
  readonly lot: string;
  /** null: of the card. */
  readonly row: number | null;
  /** null: not said. [serial day] */
  readonly arrived: number | null;
  readonly count: number;
  /** Whether the count was given as a number, or is plainly one fish. */
  readonly exact: boolean;
  readonly doa: number;
  /** How many are still there. */
  remaining: number;
  /** When the last of them left; null: they are there. [serial day] */
  left: number | null;
  readonly events: FishEvent[];
}

/** Fish that leave, as a row says it. */
export interface Leaving {
  /** Of the name, as names are compared; none: not said which. */
  readonly words: readonly string[];
  readonly count: number;
  /** As many as there were. */
  readonly whole: boolean;
  readonly when: number;
  readonly row: number;
  readonly lot: string;
  readonly how: Departure;
}

/**
 * Takes fish that leave off a roster: those of the name given, the first to arrive first; without a name those of the
 * only group there is. Where the row does not say which of several, each of them keeps its fish and is told.
 *
 * @param roster groups so far, changed in place
 * @param leaving what the row says
 */
export function departFish(roster: readonly RosterFish[], leaving: Leaving): void {
  const { lot, when, row, how, count } = leaving;
  const there = roster.filter((fish) => fish.left === null && (lot === '' || fish.lot === '' || fish.lot === lot));
  const meant = named(there, leaving.words);
  const isEnd = leaving.whole || count >= meant.reduce((sum, fish) => sum + fish.remaining, 0);
  if (isEnd) {
    // A number that is not known cannot run out.
    for (const fish of meant) take(fish, leaving, leaving.whole || fish.exact ? fish.remaining : count);
    return;
  }
  if (new Set(meant.map(({ words }) => words.join(' '))).size > 1) {
    for (const fish of meant) fish.events.push({ how, count, when, row, unclear: true });
    return;
  }
  let open = count;
  for (const fish of meant) {
    const taken = Math.min(open, fish.remaining);
    if (taken > 0) take(fish, leaving, taken);
    open -= taken;
  }
}

/** The fish of that very name, else those whose name holds it or is held by it. */
function named(there: readonly RosterFish[], words: readonly string[]): readonly RosterFish[] {
  if (words.length === 0) return there;
  const key = words.join(' ');
  const same = there.filter((fish) => fish.words.join(' ') === key);
  if (same.length > 0) return same;
  const holds = (all: readonly string[], some: readonly string[]): boolean => some.every((word) => all.includes(word));
  const alike = there.filter((fish) => fish.words.length > 0 && (holds(fish.words, words) || holds(words, fish.words)));
  // A group without a name may be of any kind.
  return alike.length > 0 ? alike : there.filter((fish) => fish.words.length === 0);
}

function take(fish: RosterFish, { how, when, row, whole }: Leaving, count: number): void {
  fish.events.push({ how, count, when, row, unclear: false });
  if (!fish.exact && !whole) return;
  fish.remaining -= count;
  if (fish.remaining <= 0) fish.left = when;
}
