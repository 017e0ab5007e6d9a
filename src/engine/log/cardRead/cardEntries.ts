import type { Problem } from '../../result/problem.js';
import { ok, refuse, type Result } from '../../result/result.js';
import { isBlank, type Cell } from '../../units/cell.js';
import { decimalText } from '../../units/decimalText.js';
import { shown } from '../../units/shown.js';
import { headingUnit } from '../headings/headingUnit.js';
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
    if (entries.length === 0 && isHeading(text, cellOf(value))) continue;
    const named = cardName(text);
    if (!named.ok) return named;
    const { name: read, unit } = named.value;
    entries.push({ written: text, name: read, value: inUnit(cellOf(value), unit) });
  }
  return unique(entries);
}

/** "Name" beside "Value". */
function isHeading(text: string, value: Cell): boolean {
  return /^(?:name|setting|item)s?$/i.test(text) && typeof value === 'string' && /^values?$/i.test(value.trim());
}

/** What a name on a card is read as, and the unit it names: "Volume (gal)". */
export interface NameOnCard {
  /** null: not known here. */
  readonly name: CardName | null;
  readonly unit: string | null;
}

export function cardName(text: string): Result<NameOnCard, Problem> {
  const words = cardWordsFor(text);
  if (words === null) return ok({ name: null, unit: null });
  const { name: kind, dimension } = words;
  const unit = headingUnit(text, dimension === undefined ? { kind } : { kind, dimension });
  return unit.ok ? ok({ name: kind, unit: unit.value }) : unit;
}

/** A bare number takes the unit of its name; a value with a unit of its own keeps it. */
export function inUnit(value: Cell, unit: string | null): Cell {
  const isBare = typeof value === 'number' || (typeof value === 'string' && decimalText(value)?.rest === '');
  return unit !== null && isBare ? `${value} ${unit}` : value;
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
