/** One kind of fish in a cell. */
export interface FishGroup {
  /** As the keeper wrote it. */
  readonly written: string;
  /** Without numbers and words about them; '' where none is given. */
  readonly name: string;
  /** At least so many. */
  readonly count: number;
  /** Of these, dead on arrival. */
  readonly doa: number;
  /** "all", "the rest". */
  readonly all: boolean;
  /** A number is written. */
  readonly numbered: boolean;
  readonly exact: boolean;
}

const numberWords =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen'.split(' ');
const wordOf = new RegExp(`^(?:${numberWords.join('|')})$`);
const amountWords: Readonly<Record<string, number>> = { a: 1, an: 1, another: 1, couple: 2, dozen: 12, twenty: 20 };
const sets: Readonly<Record<string, number>> = { pair: 2, pairs: 2, trio: 3, trios: 3 };

const deadOnArrival = /\b(?:doa|d\.o\.a\.?|dead on arrival|arrived dead)(?![a-z])/;
const size =
  /\b\d+(?:[.,]\d+)?(?:\s*[-–]\s*\d+(?:[.,]\d+)?)?(?:\s*(?:cm|mm|inch(?:es)?)\b|in\b|\s*["”″])(?:\s*(?:long|each)\b)?/g;
const numberOfAThing = /(?:\b(?:lot|batch|tank|qt|system|rack|no|nr|invoice|box|bag)\.?\s*|#\s*)\d+\s*:?/g;
const gathering = /^\s*(?:an? )?(?:school|shoal|group|lot|batch|bag|box) of (?=\S)/;
const everyOne = /\b(?:all|everything|everyone|the rest|rest|remaining)\b/;
const someOf = /\b(?:some|several|(?:a )?few|many|various|lots? of|multiple|more)\b/;
/** Where it went or came from, when and why: no part of a name. */
const tail =
  /\s*(?:→|->|=>|\b(?:from|to|into|via|due|because|after|overnight|this|last|found|jumped|today|yesterday|during|in the|on the)\b).*$/;
const fillers =
  /\b(?:fish(?:es)?|of|the|dead|died|dies|deaths?|lost|loss(?:es)?|morts?|mortality|sold|moved|transferred|removed|returned|out|in|new|arrived|arrivals?|added|delivered|total|about|approx\.?|ca\.?|circa|group|school|shoal|each|yes|x|y)\b/g;
/** Names that end in s and are one fish. */
const singularInS = /(?:ss|us|is|as|achilles)$/;
/** More fish than this in a cell is no count. */
const most = 10_000;

/** Reads one part of a cell: so many of one kind. */
export function fishGroup(part: string): FishGroup {
  const lower = part.toLowerCase();
  const brackets = [...lower.matchAll(/\(([^()]*)\)/g)].map(([, inside = '']) => inside.trim());
  const open = lower.replace(/\([^()]*\)?/g, ' ').replace(gathering, '');
  const isDead = deadOnArrival.test(open);
  const all = everyOne.test(open);
  const bare = open.replace(deadOnArrival, ' ').replace(everyOne, ' ').replace(size, ' ').replace(numberOfAThing, ' ');
  const counted = counting(bare.trim());
  const name = nameIn(counted.rest.replace(someOf, ' '));
  const inBrackets = brackets.map((inside) => /^(?:x|×)?\s*(\d{1,5})$/.exec(inside)?.[1]).find((found) => found);
  const number = counted.number ?? (inBrackets === undefined ? null : Number(inBrackets));
  const readable = !/\d/.test(counted.rest) && (number === null || (Number.isInteger(number) && number <= most));
  const isMany = someOf.test(counted.rest) || (name !== '' && isPlural(name));
  const implied = isMany ? 2 : name !== '' || /[a-z]/.test(lower) ? 1 : 0;
  const count = readable ? (number ?? implied) : implied;
  const isSingle = number === null && !isMany && (name !== '' || isDead);
  return {
    written: part,
    name,
    count,
    doa: Math.min(count, isDead ? count : deadIn(brackets)),
    all,
    numbered: number !== null && readable,
    exact: readable && (number !== null || all || isSingle),
  };
}

interface Counting {
  readonly number: number | null;
  /** The text without it. */
  readonly rest: string;
}

/** The number at the front or at the end, in digits or in words; a pair is two. */
function counting(text: string): Counting {
  const front =
    /^(?:~|about |approx\.? |ca\.? |circa )?\s*(?:[x×]\s*)?(\d{1,5})(?![\d.,/:]|\s*[-–]\s*\d)\s*(?:\+|ish\b)?\s*(?:[x×*]\s|[x×*](?=\s*\D)|[-–:]\s)?/;
  const back = /(?:\s*[x×*:=]\s*|\s+[-–]?\s*)(\d{1,5})\s*(?:[x×])?$/;
  const digits = front.exec(text) ?? back.exec(text);
  if (digits?.[1] !== undefined) {
    const { number, rest } = setsOf(text.replace(digits[0], ' ').trim());
    return { number: Number(digits[1]) * (number ?? 1), rest };
  }
  const half = /^(?:a )?half(?: a)? dozen\b/.exec(text);
  if (half !== null) return { number: 6, rest: text.slice(half[0].length) };
  const [first = '', ...others] = text.split(/\s+/);
  if (someOf.test(text)) return { number: null, rest: text };
  const amount = wordOf.test(first) ? numberWords.indexOf(first) : amountWords[first];
  if (amount === undefined) return setsOf(text);
  const next = others[0] ?? '';
  const unit = amountWords[next] ?? sets[next] ?? 1;
  return { number: amount * unit, rest: others.slice(unit > 1 ? 1 : 0).join(' ') };
}

function setsOf(text: string): Counting {
  const words = text.split(/\s+/);
  const found = words.find((word) => sets[word] !== undefined);
  if (found === undefined) return { number: null, rest: text };
  return { number: sets[found] ?? null, rest: words.filter((word) => word !== found).join(' ') };
}

function nameIn(rest: string): string {
  return rest
    .replace(tail, ' ')
    .replace(fillers, ' ')
    .replace(/[^\p{L}\p{N}'’-]+/gu, ' ')
    .replace(/(?:^|\s)[-–'’\d]+(?=\s|$)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

function isPlural(name: string): boolean {
  return name.endsWith('s') && !singularInS.test(name);
}

/** "(2 DOA)" beside a number. */
function deadIn(brackets: readonly string[]): number {
  const inside = brackets.find((words) => deadOnArrival.test(words));
  if (inside === undefined) return 0;
  return counting(inside.replace(deadOnArrival, ' ').trim()).number ?? 1;
}
