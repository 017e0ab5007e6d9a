import type { Clause } from './clauses.js';
import { clauseTopics, type SignTopic } from './clauseTopics.js';
import type { ClauseReading } from './clauseReading.js';

/** A clause as it reads beside the ones around it. */
export interface ReadClause {
  readonly clause: Clause;
  readonly reading: ClauseReading;
  /** A sign that a clause about now has overtaken. */
  readonly over?: boolean;
}

interface TextTopics {
  readonly ails: readonly SignTopic[];
  readonly well: readonly SignTopic[];
}

/** What the clauses are about; one that only refers to another ("not today", "except the tang") is about the same. */
export function textTopics(read: readonly ReadClause[]): TextTopics {
  const ails: SignTopic[] = [];
  const well: SignTopic[] = [];
  let before: readonly SignTopic[] = [];
  let beforeWasIll = false;
  for (const { clause, reading, over = false } of read) {
    const isSign = reading === 'bad' || over;
    if (!isSign && reading !== 'good') continue;
    const own = clauseTopics(clause.tokens, isSign);
    const refers = own.length === 0 && before.length > 0 && (isSign || beforeWasIll);
    const said: readonly SignTopic[] = refers ? before : own.length > 0 ? own : ['all'];
    const topics = isSign ? said.filter((topic) => topic !== 'feeding well') : said;
    if (reading === 'bad') ails.push(...topics);
    else if (!(read.length === 1 && isBareNone(clause))) well.push(...topics);
    before = topics;
    beforeWasIll = isSign;
  }
  if (well.includes('feeding') && well.includes('acting')) well.push('all');
  return { ails: [...new Set(ails)], well: [...new Set(well)] };
}

function isBareNone({ tokens }: Clause): boolean {
  return tokens.length === 1 && /^(?:none|nil|nothing)$/.test(tokens[0]?.text ?? '');
}
