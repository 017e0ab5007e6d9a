import { barefacts } from './barefacts.js';
import { clausesOf } from './clauses.js';
import type { Fact, TextContext } from './fact.js';
import { type Frame, framed } from './framed.js';
import { polarityOf } from './polarityOf.js';
import { sayings } from './sayings.js';
import type { Saying } from './sayings/saying.js';
import { settled } from './settled.js';
import { Tanks } from './tanks.js';
import { wordCount } from './wordCount.js';

/** What a text of a log says, fact by fact. */
export function factsIn(text: string, context: TextContext, tanks = new Tanks(context)): readonly Fact[] {
  const frames = framed(clausesOf(text), tanks);
  const found = frames.flatMap((frame) => factsOf(frame));
  return settled(text, [...found, ...barefacts(text, found, context, tanks)], frames);
}

function factsOf(frame: Frame): readonly Fact[] {
  const { clause } = frame;
  const found: Fact[] = [];
  for (const saying of sayings) {
    if (!saying.any.test(clause.low)) continue;
    if (saying.unless?.test(clause.low) === true || saying.beside?.test(frame.around) === false) continue;
    for (const match of clause.low.matchAll(saying.words)) {
      const [from, to] = [match.index, match.index + match[0].length];
      if (match[0] === '' || isWithin(found, saying, clause.from + from, clause.from + to)) continue;
      const polarity = polarityOf(saying, frame, from, to);
      // Words spelt right may be longer than those written.
      const written = clause.raw.length === clause.low.length ? clause.raw.slice(from, to) : match[0];
      const count = wordCount(clause.low, from, to);
      found.push({
        kind: saying.kind,
        polarity,
        count,
        name: written.trim(),
        from: clause.from + from,
        to: clause.from + to,
      });
    }
  }
  return found;
}

/** One kind is said once with the same words; a death on arrival is no other death. */
function isWithin(found: readonly Fact[], { kind }: Saying, from: number, to: number): boolean {
  return found.some((fact) => from < fact.to && to > fact.from && (fact.kind === kind || isInstead(fact.kind, kind)));
}

function isInstead(kind: Fact['kind'], other: Fact['kind']): boolean {
  return (
    (kind === 'dead on arrival' && other === 'deaths') ||
    (kind === 'dip, bath or bucket' && other === 'medicines') ||
    (kind === 'reducing dechlorinator' && (other === 'ammonia binder' || other === 'hyposalinity')) ||
    (kind === 'ammonia binder' && other === 'ammonia')
  );
}
