import { factsIn } from './factsIn.js';
import type { Fact, TextContext } from './fact.js';
import { Tanks } from './tanks.js';

/** As many texts as a long log has rows; texts longer than this do not come again. */
const most = 10_000;
const longest = 200;

interface Reader {
  readonly tanks: Tanks;
  readonly facts: Map<string, readonly Fact[]>;
}

const readers = new Map<string, Reader>();

/** `factsIn`, worked out once for a text: the same words come again and again in a log. */
export function rememberedFacts(text: string, context: TextContext): readonly Fact[] {
  const { tanks, facts } = readerOf(context);
  const before = facts.get(text);
  if (before !== undefined) return before;
  const found = factsIn(text, context, tanks);
  if (facts.size >= most) facts.clear();
  if (text.length <= longest) facts.set(text, found);
  return found;
}

function readerOf(context: TextContext): Reader {
  const key = [context.column, ...context.ownNames].join('\n');
  const before = readers.get(key);
  if (before !== undefined) return before;
  if (readers.size >= 100) readers.clear();
  const reader = { tanks: new Tanks(context), facts: new Map<string, readonly Fact[]>() };
  readers.set(key, reader);
  return reader;
}
