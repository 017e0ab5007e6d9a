import { clausesOf, type Clause } from './clauses.js';
import type { Fact, Polarity, TextContext } from './fact.js';
import type { Tanks } from './tanks.js';
import { wordCount } from './wordCount.js';

const nobody = /^\s*(?:0\b|none|no\b|nil|nobody|nothing|-|did not|not )|\brefused\b/i;
const later =
  /\b(?:tomorrow|tmrw|due|eta|ordered|on order|next|will|if|expected|planned|arriv(?:es|ing) (?:mon|tue|wed|thu|fri|sat|sun))\b/i;

/** A text in the columns of fish names the fish without a verb; what it says otherwise is left as it was read. */
export function barefacts(text: string, found: readonly Fact[], context: TextContext, tanks: Tanks): readonly Fact[] {
  const { column } = context;
  if ((column !== 'fish in' && column !== 'fish out') || found.some(({ kind }) => kind === column)) return [];
  const clauses = clausesOf(text);
  const named = clauses.flatMap((clause) => tanks.in(clause));
  const isOther = column === 'fish in' && named.length > 0 && !named.some(({ own }) => own);
  const facts = clauses.flatMap((clause) => barefact(clause, column, tanks));
  const first = facts[0];
  if (first?.polarity === 'denied' && !named.some(({ own }) => own)) return [first];
  const isLater = later.test(text);
  return facts.map((fact) =>
    fact.polarity !== 'now' ? fact : isOther ? other(fact) : isLater ? { ...fact, polarity: 'planned' } : fact,
  );
}

function other(fact: Fact): Fact {
  return { ...fact, polarity: 'other tank' };
}

function barefact(clause: Clause, kind: 'fish in' | 'fish out', tanks: Tanks): readonly Fact[] {
  const named = tanks.in(clause);
  const { raw, from } = clause;
  const said = named.reduce((rest, { at, to }) => rest.slice(0, at) + ' '.repeat(to - at) + rest.slice(to), clause.low);
  if (clause.joint !== '' && !/^\s*(?:\d|(?:a|an|one|two|three|another)\b)/.test(said)) return [];
  const isOther = kind === 'fish in' && named.some(({ own }) => !own) && !named.some(({ own }) => own);
  const polarity: Polarity = isOther
    ? 'other tank'
    : nobody.test(said)
      ? 'denied'
      : later.test(clause.low)
        ? 'planned'
        : 'now';
  return [
    { kind, polarity, count: wordCount(said, said.length, said.length), name: raw.trim(), from, to: from + raw.length },
  ];
}
