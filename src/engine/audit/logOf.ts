import type { Card } from '../log/card.js';
import {
  cardCells,
  cardEntries,
  cardName,
  inUnit,
  type CardEntry,
  type NameOnCard,
} from '../log/cardRead/cardEntries.js';
import { readCard } from '../log/cardRead/readCard.js';
import type { ColumnKind } from '../log/headings/columnKinds.js';
import type { RawRange } from '../log/parallelRanges.js';
import type { Log } from '../log/table/log.js';
import { systemKey } from '../log/table/logBySystem.js';
import { type LogRange, headingRowOf, headingsIn } from '../log/table/logRange.js';
import { readLog } from '../log/table/readLog.js';
import type { Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { isBlank, type Cell } from '../units/cell.js';
import { shown } from '../units/shown.js';
import type { SystemCard } from './systemCard.js';
import type { HeadingRead } from '../log/headings/readHeadings.js';

interface CardRange {
  readonly range: RawRange;
  readonly cellOf: (raw: unknown) => Cell;
}

/** A card and its rows as written. */
export function cardOf({ range, cellOf }: CardRange): Result<{ card: Card; entries: readonly CardEntry[] }, Problem> {
  const entries = cardEntries(range, cellOf);
  if (!entries.ok) return entries;
  const card = readCard(cardCells(entries.value));
  return card.ok ? ok({ card: card.value, entries: entries.value }) : card;
}

/** One system's log; several systems in it are refused. */
export function logOfOneSystem(log: LogRange, card: Card, needs: readonly ColumnKind[]): Result<Log, Problem> {
  const read = readLog({ log, gallon: card.gallon, needs });
  if (!read.ok) return read;
  const names = new Map<string, string>();
  // The last spelling of a name is shown; rows of one system come one after another.
  let last = '';
  for (const name of read.value.texts.system ?? []) {
    if (name !== '' && name !== last) names.set(systemKey(name), name);
    last = name;
  }
  return names.size > 1 ? refuse({ code: 'several-systems', systems: [...names.values()].map(bareName) }) : read;
}

/** One card a row, below a heading row of card names, the system's name among them. */
export function systemCards({ range, cellOf }: CardRange): Result<readonly SystemCard[], Problem> {
  const read = (range[0] ?? []).map((raw) => nameOf(cellOf(raw)));
  const fault = read.find((each) => !each.ok);
  if (fault !== undefined && !fault.ok) return fault;
  const names = read.map((each) => (each.ok ? each.value : { name: null, unit: null }));
  const system = names.findIndex(({ name }) => name === 'system');
  if (system === -1) return refuse({ code: 'card-without', card: 'cards', name: 'system' });
  const cards: SystemCard[] = [];
  for (let row = 1; row < range.length; row++) {
    const cells = names.map(({ name, unit }, column) => [name, inUnit(cellOf(range[row]?.[column]), unit)] as const);
    const name = cells[system]?.[1] ?? null;
    if (cells.every(([, cell]) => isBlank(cell))) continue;
    const values = cells.flatMap(([key, cell]) => (key === null || isBlank(cell) ? [] : [[key, cell] as const]));
    const card = readCard(new Map(values), `card of ${shown(name)}`);
    if (!card.ok) return card;
    const own = typeof name === 'string' ? name.trim() : shown(name);
    const twin = cards.find((other) => systemKey(other.name) === systemKey(own));
    if (twin !== undefined) return refuse({ code: 'card-twice', name: 'system', first: twin.name, second: own });
    cards.push({ name: own, card: card.value });
  }
  return ok(cards);
}

function nameOf(cell: Cell): Result<NameOnCard, Problem> {
  return typeof cell === 'string' && !isBlank(cell) ? cardName(cell) : ok({ name: null, unit: null });
}

/** A name cut as messages cut it, without the quotes that the sentence puts around it. */
function bareName(name: string): string {
  return shown(name).slice(1, -1);
}

/** The headings of a log as they are understood; a range without a single known one has no heading row. */
export function logHeadings(log: LogRange): Result<readonly HeadingRead[], Problem> {
  const read = headingsIn(log, headingRowOf(log));
  const isKnown = !read.ok || read.value.some(({ words }) => words !== null);
  return isKnown ? read : refuse({ code: 'missing-heading', kind: 'time' });
}
