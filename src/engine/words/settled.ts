import type { Fact, FactKind } from './fact.js';
import type { Frame } from './framed.js';

/** Quotations are looked for in this much of a text. */
const quoted = 2_000;
const doneSo =
  /^\s*(?:done(?: since)?\b|did (?:it|so|that)\b|doing (?:it|so|what)|waited a day|tried it)|\b(?:it|they) went in\b|\bit'?s my (?:own )?tank\b/;
/** Said to be one thing, and then explained as nothing. */
const explained: readonly FactKind[] = ['leak', 'dosed twice'];

/** What the facts are in the light of the whole text. */
export function settled(text: string, facts: readonly Fact[], frames: readonly Frame[]): readonly Fact[] {
  const doneAt = frames.find(({ clause }) => doneSo.test(clause.low))?.clause.from ?? -1;
  const quotes = [...text.slice(0, quoted).matchAll(/["“][^"”]{12,}["”]/g)].map((match) => [
    match.index,
    match.index + match[0].length,
  ]);
  const lastOver = new Map(facts.filter(({ polarity }) => polarity === 'ended').map(({ kind, from }) => [kind, from]));
  const denied = new Set(facts.filter(({ polarity }) => polarity === 'denied').map(({ kind }) => kind));
  return facts.map((fact): Fact => {
    const { polarity, kind, from } = fact;
    if ((polarity === 'hearsay' || polarity === 'planned') && from < doneAt) return { ...fact, polarity: 'now' };
    if (polarity !== 'now') return fact;
    if (quotes.some(([start = 0, end = 0]) => from > start && from < end)) return { ...fact, polarity: 'hearsay' };
    if ((lastOver.get(kind) ?? -1) > from) return { ...fact, polarity: 'ended' };
    return explained.includes(kind) && denied.has(kind) ? { ...fact, polarity: 'denied' } : fact;
  });
}
