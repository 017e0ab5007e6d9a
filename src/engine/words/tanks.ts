import type { Clause } from './clauses.js';
import type { TextContext } from './fact.js';

/** A tank that a clause names. */
export interface TankNamed {
  readonly own: boolean;
  /** Things come from there: "out of the display". */
  readonly isSource: boolean;
  /** Things go there: "into the display". */
  readonly isTarget: boolean;
  readonly at: number;
  readonly to: number;
}

const ownWords =
  "(?:my |the |our )?(?:qt|quarantine(?: tank| system)?|quaranteen|hospital(?: tank)?|treatment tank|this (?:tank|system|vat)|main volume)(?!['’]?s? ?-?[a-z0-9]\\b)";
const otherWords = [
  '(?:the )?(?:main )?display(?! refuses)(?: tank| reactor)?|\\bdt|(?:the )?reef(?! ?(?:mash|food|safe|salt|flakes|roids))(?: tank)?|frag(?:s| tank| system)?|tub|sump of the dt|anemone tank',
  '(?:big|other|little|small|large|new|main|garden|spare|show|neighbour\\w*|old|second) (?:aquarium|tank|pond|system|vat)|goldfish(?: pond)?|pond|refugium|other room|coral row|sales (?:row|vats?|tank)|garage|cure bin|aquarium of',
  '(?:the )?\\d+ ?(?:g|gal|gallon|l|litre|liter)\\b(?: tank)?(?= (?:in|is|has|tank)\\b)|the (?:20|29|30|40|55|60|75|90|120|125|180|200)\\b(?! (?:fish|ml|l|days?|h)\\b)|acclimation room|observation(?: tank| tub)?|obs-\\d|isolation|tank \\d+|laundry room|roof leaks?|eyewash|skylight|bathroom|kitchen',
  "(?:my |his |her |their |a )?(?:neighbou?r|cousin|friend|buddy|club member|brother|sister|colleague|uncle)(?:'s)?(?! in law (?:gave|lent))(?! (?:gave|lent|yelled))|(?:previous|last) owner|old tank|\\blfs|(?:the|that|a) (?:shop|store)(?! (?:closed|took|lent|was|lady))",
].join('|');

const tankWords = new RegExp(`(\\b${ownWords})|(\\b(?:${otherWords})(?:'s)?)`, 'g');
const source = /(?:\bfrom|\bout of|\boff|\bcame from|\bborrowed)\s+(?:the |my |our |his )?$/;
const target = /(?:->|→|\binto|\bto|\bin|\bon|\bover to|\bonto|\bat|\bfor)\s+(?:the |my |our |a |tank )?$/;

/** The tanks that clauses name, by the words for tanks and by names formed as the log's own are. */
export class Tanks {
  private readonly own: RegExp | null;
  private readonly alike: RegExp | null;

  constructor({ ownNames }: TextContext) {
    const names = ownNames.map((name) => name.trim()).filter((name) => name !== '');
    this.own = names.length === 0 ? null : new RegExp(`\\b(?:${names.map(nameSource).join('|')})(?!\\w|[-.]\\d)`, 'g');
    const shapes = [...new Set(names.flatMap(shapeOf))];
    this.alike = shapes.length === 0 ? null : new RegExp(`\\b(?:${shapes.join('|')})(?![\\w-])`, 'g');
  }

  /** The clause without names that are also colours: "Blue" is no blue. */
  masked(clause: Clause): Clause {
    let low = clause.low;
    for (const { at, to } of this.in(clause)) {
      if (colours.test(clause.raw.slice(at, to))) low = `${low.slice(0, at)}${'x'.repeat(to - at)}${low.slice(to)}`;
    }
    return { ...clause, low };
  }

  in({ raw, low }: Clause): readonly TankNamed[] {
    const found: TankNamed[] = [];
    const add = (own: boolean, at: number, length: number): void => {
      if (found.some((tank) => at < tank.to && at + length > tank.at)) return;
      const before = low.slice(Math.max(0, at - 24), at);
      found.push({ own, at, to: at + length, isSource: source.test(before), isTarget: target.test(before) });
    };
    for (const match of this.own === null ? [] : raw.matchAll(this.own)) {
      if (!/[\d.]$|\b(?:x|day|d|row|pts?|[<>=])\s*$/i.test(raw.slice(0, match.index)) || !/^\d/.test(match[0]))
        if (!/^\d$/.test(match[0]) || /\b(?:in|on|vat|into|juiced)\s*$/i.test(raw.slice(0, match.index)))
          add(true, match.index, match[0].length);
    }
    for (const match of this.alike === null ? [] : raw.matchAll(this.alike)) add(false, match.index, match[0].length);
    for (const match of low.matchAll(tankWords)) add(match[1] !== undefined, match.index, match[0].length);
    return found.sort((a, b) => a.at - b.at);
  }
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/** A single letter or digit needs its case; a longer name is written in whatever case. */
function nameSource(name: string): string {
  if (name.length === 1 || colours.test(name)) return escaped(name);
  return Array.from(name, (letter) => {
    const [small, great] = [letter.toLowerCase(), letter.toUpperCase()];
    return small === great ? escaped(letter) : `[${small}${great}]`;
  }).join('');
}

const colours = /^(?:Blue|Green|Red|Yellow|White|Black|Orange|Purple)$/;

/** Names formed like one of the log's own are other tanks of the same owner. */
function shapeOf(name: string): readonly string[] {
  if (/^[A-Z]{1,2}\d{1,2}$/.test(name)) return ['[A-GRST]\\d{1,2}', '[A-H] row'];
  if (/^[A-Za-z]+-[A-Z]$/.test(name)) return [`${escaped(name.slice(0, -1))}[A-Z]`, 'DT'];
  const numbered = /^([A-Za-z]+) \d{1,3}$/.exec(name);
  if (numbered?.[1] !== undefined) {
    const [first = '', ...rest] = numbered[1];
    return [`[${first.toLowerCase()}${first.toUpperCase()}]${escaped(rest.join(''))} \\d{1,3}`];
  }
  return colours.test(name) ? ['(?:Blue|Green|Red|Yellow|White|Black|Orange|Purple)', 'Tub', 'Frags?'] : [];
}
