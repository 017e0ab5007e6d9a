import type { SignToken } from './signTokens.js';
import type { WordKind } from './signWords.js';

/** Words that stand between two separators, and how the clause hangs on the one before. */
export interface Clause {
  readonly tokens: readonly SignToken[];
  readonly joint: 'first' | 'comma' | 'stop' | 'and' | 'but' | 'except' | 'after';
  /** Ends with a question mark. */
  readonly asked: boolean;
}

const background: readonly SignToken['kind'][] = [
  'filler',
  'fish',
  'still',
  'now',
  'seen',
  'some',
  'little',
  'breathBad',
];

/**
 * The clauses of a text. What one word says of a whole list stays one clause: "no spots, flashing or gasping",
 * "flashing and scratching stopped", "breathing and swimming normally".
 */
export function clauses(tokens: readonly SignToken[]): readonly Clause[] {
  return withLists(split(tokens));
}

function split(tokens: readonly SignToken[]): Clause[] {
  const found: Clause[] = [];
  let words: SignToken[] = [];
  let joint: Clause['joint'] = 'first';
  const end = (next: Clause['joint'], asked: boolean): void => {
    if (words.length > 0) found.push({ tokens: words, joint, asked });
    // Of "flashing, but eating" the stronger joint counts.
    joint = words.length > 0 || (next !== 'comma' && next !== 'stop') ? next : joint;
    words = [];
  };
  for (const token of tokens) {
    if (token.kind === 'question') end('stop', true);
    else if (token.kind === 'comma') end(token.text === ',' ? 'comma' : 'stop', false);
    else if (token.kind === 'and' || token.kind === 'but' || token.kind === 'except') end(token.kind, false);
    else if (token.kind !== 'after') words.push(token);
    // "After lights out it ate" begins with its background: nothing to set apart.
    else if (words.length > 0) end('after', false);
  }
  end('stop', false);
  return found;
}

function withLists(parts: readonly Clause[]): Clause[] {
  const joined: Clause[] = [];
  for (let at = 0; at < parts.length; at++) {
    const part = parts[at];
    if (part === undefined) break;
    const last = lastOfList(parts, at);
    const list = parts.slice(at, last + 1);
    joined.push({ ...part, tokens: list.flatMap((one) => one.tokens), asked: list.some((one) => one.asked) });
    at = last;
  }
  return joined;
}

/** More parts than this are no list that a person writes. */
const longestList = 12;

/** The last clause that belongs to the list begun at `first`; `first` itself where there is no list. */
function lastOfList(parts: readonly Clause[], first: number): number {
  const end = first + longestList;
  let last = first;
  while (last < end && isBare(parts[last], 'breathing') && isListed(parts[last + 1])) last++;
  if (last > first) return last;
  while (last < end && isBare(parts[last], 'badNoun') && parts[last + 1]?.joint === 'and') last++;
  const ended = parts[last]?.tokens ?? [];
  const endsAll = ended.some(({ kind }) => kind === 'stopped' || kind === 'gone');
  if (last > first && endsAll && ended.some(({ kind }) => kind === 'badNoun')) return last;
  return lastOfDenied(parts, first);
}

/** "no spots, flashing or gasping" is one list, as its last part says or; "no spots, flashing" may be two statements. */
function lastOfDenied(parts: readonly Clause[], first: number): number {
  const words = (parts[first]?.tokens ?? []).filter(({ kind }) => !background.includes(kind));
  const denies =
    words.length > 1 && words[0]?.kind === 'negator' && words.slice(1).every(({ kind }) => kind === 'badNoun');
  if (!denies) return first;
  for (
    let last = first + 1;
    last < first + longestList && isBare(parts[last], 'badNoun') && parts[last]?.joint === 'comma';
    last++
  ) {
    if (parts[last]?.tokens.some(({ text }) => text === 'or')) return last;
  }
  return first;
}

function isListed(part: Clause | undefined): boolean {
  return part?.joint === 'and' || part?.joint === 'comma';
}

/** Holds words of this kind and nothing else that speaks of the fish. */
function isBare(part: Clause | undefined, kind: WordKind): boolean {
  const words = (part?.tokens ?? []).filter((token) => !background.includes(token.kind));
  return words.length > 0 && words.every((token) => token.kind === kind);
}
