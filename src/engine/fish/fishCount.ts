import { fishGroup, type FishGroup } from './fishGroup.js';
import { fishNames } from './fishNames.js';

/** The column a cell stands in: "2 DOA" beside other fish is part of those that came in, but adds to those that died. */
type FishColumn = 'fish in' | 'fish out' | 'dead';

/** What a cell says of how many fish, and which. */
interface FishCount {
  readonly groups: readonly FishGroup[];
  /** At least so many, those dead on arrival included. */
  readonly count: number;
  readonly doa: number;
  /** "all", "the rest": as many as there were. */
  readonly all: boolean;
  /** False where the cell gives no number that can be read, as in "tangs", "some" or "5 or 6". */
  readonly exact: boolean;
  readonly names: readonly string[];
}

const none = /^(?:0|no|none|nil|n\/?a|nothing|[-–—]+|(?:no|0) (?:fish|deaths?|dead|loss(?:es)?|morts|doa))[.!]?$/i;
const joints = /\s+(?:and|plus|&|\+)\s+/i;
const colour = '(?:black|white|yellow|blue|red|gold|silver|orange|green|pink|purple|brown)';
const twoColours = new RegExp(`\\b${colour}\\s+(?:and|&|\\+)\\s+${colour}\\b`, 'i');
/** "2 tangs 1 dead" are two statements without a separator. */
const lateDead = /(\S)\s+(?=(?:\d+|one|two|three)\s*(?:x\s*)?(?:doa|dead|died)\b)/gi;

/**
 * The fish in a cell such as "2 tangs", "5 x chromis", "1 DOA", "clownfish pair", "tang (sold)" or 3.
 *
 * Definition: a name without a number is one fish, a plural without a number at least two and not exact; commas,
 * semicolons, new lines and the word and stand between groups.
 *
 * @param text the cell's text; '' is no fish
 * @param column what the cell's column counts
 * @returns groups in the order given, with their sum
 * @example fishCount('2 tangs, 5 x chromis', 'fish in').count // = 7
 */
export function fishCount(text: string, column: FishColumn): FishCount {
  const plain = text.trim();
  if (plain === '' || none.test(plain)) return summed([]);
  const parts = fishNames(plain.replace(lateDead, '$1, ')).flatMap(apart);
  const groups = parts.filter((part) => !none.test(part)).map(fishGroup);
  return summed(column === 'fish in' ? withDeadAmongThem(groups) : groups);
}

/** "3 tangs and a clown" is two groups, "black and white heniochus" one. */
function apart(part: string): readonly string[] {
  return twoColours.test(part) ? [part] : part.split(joints).filter((piece) => piece !== '');
}

/** Dead on arrival without a name: some of the fish named before. */
function withDeadAmongThem(groups: readonly FishGroup[]): readonly FishGroup[] {
  const among: FishGroup[] = [];
  for (const group of groups) {
    const before = among[among.length - 1];
    if (group.name !== '' || group.doa === 0 || before === undefined) among.push(group);
    else among[among.length - 1] = { ...before, doa: Math.min(before.count, before.doa + group.doa) };
  }
  return among;
}

function summed(groups: readonly FishGroup[]): FishCount {
  return {
    groups,
    count: groups.reduce((sum, { count }) => sum + count, 0),
    doa: groups.reduce((sum, { doa }) => sum + doa, 0),
    all: groups.some(({ all }) => all),
    exact: groups.every(({ exact }) => exact),
    names: groups.flatMap(({ name }) => (name === '' ? [] : [name])),
  };
}
