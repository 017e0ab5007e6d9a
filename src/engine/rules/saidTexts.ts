import type { Log } from '../log/table/log.js';
import type { Fact, TextColumn } from '../words/fact.js';
import { rememberedFacts } from '../words/rememberedFacts.js';

/** A text of a log and what it says. */
export interface SaidText {
  readonly entry: number;
  readonly column: TextColumn;
  readonly text: string;
  readonly facts: readonly Fact[];
}

const columns: readonly TextColumn[] = ['fish in', 'fish out', 'dead', 'signs', 'note'];
const known = new WeakMap<Log, readonly SaidText[]>();

/**
 * What the texts of a log say, in the order of its rows. The name of the row's own system is the name of its own tank:
 * any other tank that is named is another one.
 */
export function saidTexts(log: Log): readonly SaidText[] {
  const before = known.get(log);
  if (before !== undefined) return before;
  const said: SaidText[] = [];
  for (let entry = 0; entry < log.count; entry++) {
    const system = log.texts.system?.[entry] ?? '';
    for (const column of columns) {
      const text = log.texts[column]?.[entry] ?? '';
      if (text === '') continue;
      const facts = rememberedFacts(text, { column, ownNames: system === '' ? [] : [system] });
      said.push({ entry, column, text, facts });
    }
  }
  known.set(log, said);
  return said;
}
