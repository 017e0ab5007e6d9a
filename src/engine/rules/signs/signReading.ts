import { clauseReading, type ClauseReading } from './clauseReading.js';
import { clauses, type Clause } from './clauses.js';
import { type ReadClause, textTopics } from './textTopics.js';
import { signTokens } from './signTokens.js';
import type { SignTopic } from './clauseTopics.js';

/** How a keeper's text about the fish reads. */
export interface SignReading {
  /**
   * sign: at least one sign of illness. clear: eats and acts normally. easing: better, not yet well. same: as the text
   * before it. unread: not understood, or nothing about the fish.
   */
  readonly kind: 'sign' | 'clear' | 'easing' | 'same' | 'unread';
  /** Says that nothing has changed: "still not eating". */
  readonly continuing: boolean;
  /** The kinds of fish it names, of a text with a sign only those not said to be well. */
  readonly fish: readonly string[];
  /** What its signs are about; empty without one. */
  readonly ails: readonly SignTopic[];
  /** What it says is well. A bare "none" is as good as nothing written. */
  readonly well: readonly SignTopic[];
}

/**
 * Reads a text such as "eating but breathing heavily", clause by clause: one sign makes it a sign, one clause that is
 * not understood makes the rest unread.
 *
 * Definition: negations reach to the end of their clause ("no flashing or scratching"); a clause about the past gives
 * way to one about now; "all eating except the tang" is a sign.
 */
export function signReading(text: string): SignReading {
  const read = inContext(clauses(signTokens(text)).map((clause) => ({ clause, reading: clauseReading(clause) })));
  const kind = kindOf(read.map(({ reading }) => reading));
  const named = read.filter(({ reading }) => kind !== 'sign' || reading !== 'good');
  const tokens = read.flatMap(({ clause }) => clause.tokens);
  return {
    kind,
    continuing: tokens.some((token) => token.kind === 'still' || token.kind === 'same'),
    fish: [
      ...new Set(
        named.flatMap(({ clause }) =>
          clause.tokens.filter((token) => token.kind === 'fish').map(({ text }) => fishKind(text)),
        ),
      ),
    ],
    ...textTopics(read),
  };
}

function kindOf(readings: readonly ClauseReading[]): SignReading['kind'] {
  if (readings.includes('bad')) return 'sign';
  if (readings.includes('unknown')) return 'unread';
  if (readings.includes('partial')) return 'easing';
  if (readings.includes('good')) return 'clear';
  if (readings.includes('easing')) return 'easing';
  return readings.includes('same') ? 'same' : 'unread';
}

/** The clauses as the ones around them leave them. */
function inContext(read: readonly ReadClause[]): readonly ReadClause[] {
  const firstSpoken = read.findIndex(({ reading }) => reading !== 'aside' && reading !== 'unknown');
  const referred = read.map((one, at) =>
    one.reading === 'denied' ? { ...one, reading: opposite(read[at - 1]) } : one,
  );
  const lastWellNow = referred.map(isWellNow).lastIndexOf(true);
  return referred.map(({ clause, reading }, at) => {
    const spoken = firstSpoken !== -1 && firstSpoken < at;
    if (spoken && (clause.joint === 'except' || (clause.joint === 'but' && namesOthers(clause))))
      return { clause, reading: 'bad' };
    if (clause.joint === 'after' && spoken) return { clause, reading: 'aside' };
    if (reading === 'weak') return { clause, reading: spoken ? 'bad' : 'unknown' };
    const over = reading === 'bad' && at < lastWellNow && has(clause, 'past');
    return over ? { clause, reading: 'aside', over } : { clause, reading };
  });
}

/** What "not today" says after a clause. */
function opposite(before: ReadClause | undefined): ClauseReading {
  switch (before?.reading) {
    case 'good':
    case 'partial':
    case 'easing':
      return 'bad';
    case 'bad':
      return 'good';
    case 'same':
    case 'weak':
    case 'denied':
    case 'aside':
    case 'unknown':
    case undefined:
      return 'unknown';
  }
}

/** "all eating but the tang", "all fine but one": names fish and says nothing of them. */
function namesOthers({ tokens }: Clause): boolean {
  const names = tokens.some(({ kind, text }) => kind === 'fish' || /^(?:one|two|three|\d+)$/.test(text));
  return names && tokens.every(({ kind }) => kind === 'fish' || kind === 'filler');
}

function isWellNow({ clause, reading }: ReadClause): boolean {
  return (reading === 'good' || reading === 'partial') && has(clause, 'now');
}

function has(clause: Clause, kind: 'past' | 'now'): boolean {
  return clause.tokens.some(
    (token) => token.kind === kind || (kind === 'past' && /^(?:was|were|had|did)nt$/.test(token.text)),
  );
}

/** "tangs" and "tang", "butterflies" and "butterflyfish" are one kind. */
function fishKind(name: string): string {
  return name
    .replace(/fish(?:es)?$/, '')
    .replace(/ies$/, 'y')
    .replace(/(?:faces?)$/, '')
    .replace(/s$/, '');
}
