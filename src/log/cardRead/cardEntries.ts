import type { Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { isBlank, type Cell } from '../../units/cell.js';
import { shown } from '../../units/shown.js';
import type { RawRange } from '../parallelRanges.js';
import { cardWordsFor, type CardName } from './cardNames.js';

/** A row of a card: its name as written, what it is read as, its value. */
export interface CardEntry {
  readonly written: string;
  /** null: not known here. */
  readonly name: CardName | null;
  readonly value: Cell;
}

/** The rows of a card, a two-column range of names and values; two rows for one thing are refused with both. */
export function cardEntries(range: RawRange, cellOf: (raw: unknown) => Cell): Result<readonly CardEntry[], Problem> {
  const columns = range[0]?.length ?? 0;
  if (columns !== 2) return refuse({ code: 'card-shape', rows: range.length, columns });
  const entries: CardEntry[] = [];
  for (const [written, value] of range) {
    const name = cellOf(written);
    if (isBlank(name)) continue;
    const text = typeof name === 'string' ? name.trim() : shown(name);
    entries.push({ written: text, name: cardWordsFor(text)?.name ?? null, value: cellOf(value) });
  }
  return unique(entries);
}

function unique(entries: readonly CardEntry[]): Result<readonly CardEntry[], Problem> {
  const seen = new Map<CardName, string>();
  for (const { name, written, value } of entries) {
    if (name === null || isBlank(value)) continue;
    const first = seen.get(name);
    if (first !== undefined) return refuse({ code: 'card-twice', name, first: shown(first), second: shown(written) });
    seen.set(name, written);
  }
  return ok(entries);
}

/** The values by name. */
export function cardCells(entries: readonly CardEntry[]): ReadonlyMap<CardName, Cell> {
  return new Map(
    entries.flatMap(({ name, value }) => (name === null || isBlank(value) ? [] : [[name, value] as const])),
  );
}
