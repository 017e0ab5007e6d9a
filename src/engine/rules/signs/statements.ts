import type { SignToken } from './signTokens.js';

/** A word that says how the fish is, and whether the words around it turn it into its opposite. */
export interface Statement {
  readonly token: SignToken;
  readonly at: number;
  /** As the whole clause means it. */
  readonly bad: boolean;
  readonly flipped: boolean;
}

interface Weighed {
  readonly token: SignToken;
  readonly at: number;
  readonly bad: boolean;
  flipped: boolean;
}

/**
 * The statements of a clause with their negations. A negation turns what follows as long as it is of one kind ("no spots
 * eating well" denies the spots alone); at the end of a clause it turns what goes before ("flashing stopped",
 * "eating: no"). Two negations of one word cancel.
 */
export function statements(tokens: readonly SignToken[]): readonly Statement[] {
  const found: Weighed[] = [];
  const weights = tokens.map((token) => weight(token, tokens));
  let denials = 0;
  let scope: boolean | null = null;
  tokens.forEach((token, at) => {
    const bad = weights[at] ?? null;
    if (bad !== null) {
      if (scope !== null && scope !== bad) denials = 0;
      scope = bad;
      found.push({ token, at, bad, flipped: denials % 2 === 1 });
      return;
    }
    // "Gone lethargic" denies nothing: gone turns only what goes before.
    if (!isDenial(token) || (token.kind === 'gone' && found.length === 0)) return;
    const turnsBack = token.kind === 'gone' || !weights.slice(at + 1).some((later) => later !== null);
    if (turnsBack && found.length > 0 && !deniesOther(tokens, at)) {
      const open = scope === null ? denials : 0;
      if (open % 2 === 0) turnBack(found);
      denials = 0;
    } else {
      denials = scope === null ? denials + 1 : 1;
    }
    scope = null;
  });
  return found.map(({ token, at, bad, flipped }) => ({ token, at, flipped, bad: bad !== flipped }));
}

function isDenial({ kind }: SignToken): boolean {
  return kind === 'negator' || kind === 'stopped' || kind === 'nothing' || kind === 'gone';
}

/** A "not" that denies something else than the statements before it: "flashing not stopped", but "flashing not seen". */
function deniesOther(tokens: readonly SignToken[], at: number): boolean {
  const rest = tokens.slice(at + 1);
  return tokens[at]?.kind === 'negator' && rest.length > 0 && !rest.some(({ kind }) => kind === 'seen');
}

/** The last statements of one kind, back to the first that is of the other. */
function turnBack(found: Weighed[]): void {
  const kind = found[found.length - 1]?.bad;
  for (let i = found.length - 1; i >= 0; i--) {
    const statement = found[i];
    if (statement === undefined || statement.bad !== kind) return;
    statement.flipped = !statement.flipped;
  }
}

const saysIll: Partial<Record<SignToken['kind'], boolean>> = {
  bad: true,
  badNoun: true,
  feeds: false,
  lively: false,
  fine: false,
  partial: false,
  easing: false,
};

/** Whether a word says that the fish is ill (true) or well (false); null where it says neither here. */
function weight({ kind, text }: SignToken, tokens: readonly SignToken[]): boolean | null {
  const says = saysIll[kind];
  if (says !== undefined) return says;
  const beside = (...kinds: SignToken['kind'][]): boolean => tokens.some((token) => kinds.includes(token.kind));
  if (kind === 'place') return beside('feeds', 'lively') ? null : true;
  if (kind === 'breathBad') return beside('breathing') ? true : null;
  if (kind === 'slow') return beside('breathing', 'swimming') ? true : null;
  if (kind === 'slower')
    return beside('breathing') ? false : /^slow/.test(text) && beside('swimming', 'feeds') ? true : null;
  if (kind !== 'swimming') return null;
  return tokens.some((token) => token.kind in saysIll) || beside('place', 'slow', 'slower') ? null : false;
}
