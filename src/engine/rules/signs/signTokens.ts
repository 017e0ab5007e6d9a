import { distance } from 'fastest-levenshtein';
import { signWords, type WordKind } from './signWords.js';

/** A word or phrase of a keeper's text; `word` is one that is in no list. */
export interface SignToken {
  readonly kind: WordKind | 'word' | 'comma' | 'question';
  readonly text: string;
}

const kinds = signWords.map(([kind]) => kind);
const sources = signWords.map(([, items]) => `(${items.split(/,\s+/).join('|')})`);
const listed = new RegExp(`(?:${sources.join('|')})(?![\\p{L}\\p{N}])`, 'uy');
const anything = /(\d+(?:[.,:/-]\d+)*[a-z]*)|([\p{L}\p{N}]+)|([,;.!()\n|])|(\?)|([&+])|(.)/uy;

/** Words that are often mistyped; one slip still reads. */
const mistyped =
  'lethargic lethargy listless sluggish flashing scratching breathing gasping twitching erratic laboured labored refusing eating clamped appetite recovered normally'.split(
    ' ',
  );
const shortestMistyped = 7;

/** A text as words and phrases of known meaning, separators, and words in no list. */
export function signTokens(text: string): readonly SignToken[] {
  const line = plain(text);
  const tokens: SignToken[] = [];
  let at = 0;
  while (at < line.length) {
    const known = wordAt(line, at);
    if (known !== null) {
      tokens.push(known);
      at += known.text.length;
      continue;
    }
    anything.lastIndex = at;
    const [found = ' ', number, word, comma, question, and] = anything.exec(line) ?? [];
    at += found.length;
    if (number !== undefined) tokens.push({ kind: 'filler', text: number });
    else if (word !== undefined) tokens.push(unlisted(word));
    else if (comma !== undefined) tokens.push({ kind: 'comma', text: comma });
    else if (question !== undefined) tokens.push({ kind: 'question', text: question });
    else if (and !== undefined) tokens.push({ kind: 'and', text: and });
  }
  return tokens;
}

/** The first phrase of the lists that stands at a word's start; null where none does. */
function wordAt(line: string, at: number): SignToken | null {
  listed.lastIndex = at;
  const match = listed.exec(line);
  if (match === null) return null;
  const index = match.findIndex((group, i) => i > 0 && group !== undefined) - 1;
  const kind = kinds[index];
  return kind === undefined || match[0] === '' ? null : { kind, text: match[0] };
}

function unlisted(word: string): SignToken {
  if (word.length >= shortestMistyped) {
    const meant = mistyped.find((right) => right[0] === word[0] && isOneSlip(word, right));
    if (meant !== undefined) return { ...(wordAt(meant, 0) ?? { kind: 'word' }), text: word };
  }
  return { kind: 'word', text: word };
}

/** One letter wrong, missing or too many, or two neighbours swapped. */
function isOneSlip(word: string, right: string): boolean {
  if (Math.abs(word.length - right.length) > 1) return false;
  if (distance(word, right) <= 1) return true;
  if (word.length !== right.length) return false;
  const at = Array.from(word).findIndex((letter, i) => letter !== right[i]);
  return word.slice(0, at) + (word[at + 1] ?? '') + (word[at] ?? '') + word.slice(at + 2) === right;
}

/** Lower case, without accents, apostrophes and hyphens; "3 of 5" says some, "5 of 5" all, "0 of 5" none. */
function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/['’‘`´]/g, '')
    .replace(/[^\S\r\n]+/g, ' ')
    .replace(/ ?[\r\n]+ ?/g, '\n')
    .replace(/\bo\.k\b\.?/g, 'ok')
    .replace(/\bw\/o\b/g, 'without')
    .replace(/\band\/or\b/g, 'or')
    .replace(
      /\b(\d{1,2})\/(\d{1,2})(?= (?:fish |are |is |of them )*(?:eat|ate|feed|ok|fine|good|well|active|flash|not|breath))/g,
      '$1 of $2',
    )
    .replace(/\s[-–—]+\s/g, ' , ')
    .replace(/(\p{L})[-‐-―_](?=\p{L})/gu, '$1 ')
    .replace(/[:"“”*#~]/g, ' ')
    .replace(/\b(\d{1,4}) (?:out )?of (\d{1,4})\b/g, (_, part: string, all: string) => share(Number(part), Number(all)))
    .replace(/[^\S\n]+/g, ' ')
    .trim();
}

function share(part: number, all: number): string {
  return part === 0 ? 'none' : part < all ? 'only' : 'all';
}
