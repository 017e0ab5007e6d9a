import type { Clause } from './clauses.js';
import { statements, type Statement } from './statements.js';
import type { SignToken } from './signTokens.js';

/**
 * What a clause says of the fish: `partial` is well, but not yet quite; `weak` ("not much") and `denied` ("not today")
 * depend on the clause before; `aside` speaks of something else.
 */
export type ClauseReading = 'bad' | 'good' | 'partial' | 'easing' | 'same' | 'weak' | 'denied' | 'aside' | 'unknown';

/** How far behind a good word one that weakens it may stand. [words] */
const weakenAfter = 2;
/** Nobody writes a longer one about a fish; it is left unread. [words] */
const longestClause = 60;

/** Reads one clause by itself. */
export function clauseReading({ tokens, asked }: Clause): ClauseReading {
  if (tokens.length > longestClause || has(tokens, 'irreal')) return 'unknown';
  const said = statements(tokens);
  const readings = said.map((statement) => statementReading(statement, tokens));
  if (readings.includes('bad')) return 'bad';
  if (tokens.some((token) => isSame(token, said.length > 0))) return 'same';
  if (said.length === 0) return readingWithoutStatement(tokens);
  const ofWater = has(tokens, 'water') && said.every(({ token }) => token.kind === 'fine' || token.kind === 'easing');
  if (ofWater) return 'aside';
  if (asked || has(tokens, 'maybe')) return 'unknown';
  // How it swims is what matters, and a word in no list, or "fast", says how.
  if (
    (has(tokens, 'word') || has(tokens, 'breathBad')) &&
    said.every(({ token, bad }) => token.kind === 'swimming' && !bad)
  )
    return 'unknown';
  return readings.find((reading) => reading !== 'good') ?? 'good';
}

function statementReading({ token, at, bad, flipped }: Statement, tokens: readonly SignToken[]): ClauseReading {
  const before = tokens.slice(0, at);
  const after = tokens.slice(at + 1);
  if (token.kind === 'partial') return flipped ? 'bad' : 'partial';
  if (token.kind === 'slower') return bad ? 'bad' : 'partial';
  if (bad || (flipped && has(after, 'asMuch'))) return 'bad';
  const weakened = !flipped && (has(before, 'less') || has(after.slice(0, weakenAfter), 'less'));
  if (weakened) return 'bad';
  if (token.kind === 'easing') return 'easing';
  if (has(before, 'some')) return 'bad';
  if (has(tokens, 'little') || has(after, 'some')) return 'partial';
  return token.kind === 'feeds' && has(tokens, 'slow') ? 'bad' : 'good';
}

/** "not seen today" and "not breathing" are signs, "none" is none; "not much" weakens the clause before. */
function readingWithoutStatement(tokens: readonly SignToken[]): ClauseReading {
  if (has(tokens, 'word')) return 'unknown';
  if (isOfOthers(tokens)) return 'denied';
  const denied = has(tokens, 'negator') && (has(tokens, 'seen') || has(tokens, 'breathing'));
  if (denied || (has(tokens, 'less') && has(tokens, 'breathing'))) return 'bad';
  if (has(tokens, 'nothing') && !has(tokens, 'negator')) return 'good';
  if (has(tokens, 'negator') && has(tokens, 'now')) return 'denied';
  return has(tokens, 'less') ? 'weak' : 'aside';
}

/** "Not the tang", "not all": the opposite of what is said of the others. */
function isOfOthers(tokens: readonly SignToken[]): boolean {
  const notAll = tokens.some(({ kind, text }) => kind === 'some' && text.startsWith('not '));
  const others = notAll || (has(tokens, 'negator') && has(tokens, 'fish'));
  return others && tokens.every(({ kind }) => ['negator', 'fish', 'filler', 'some', 'now'].includes(kind));
}

/** "appetite unchanged" is as it was; of "the same wrasse eating" and "eating as before" the other words count. */
function isSame({ kind, text }: SignToken, saysMore: boolean): boolean {
  return kind === 'same' && !(saysMore && /^(?:the )?same|^as before/.test(text));
}

function has(tokens: readonly SignToken[], kind: SignToken['kind']): boolean {
  return tokens.some((token) => token.kind === kind);
}
