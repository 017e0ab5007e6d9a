import type { Place, Problem } from '../result/problem.js';
import { ok, refuse, type Result } from '../result/result.js';
import { isBlank, type Cell } from '../units/cell.js';
import { misplaced } from '../units/parseQuantity.js';
import { shown } from '../units/shown.js';
import { fishNames } from './fishNames.js';

/** A range of fish names, and how the host's cells are read. */
interface FishRange {
  readonly fish: readonly (readonly unknown[])[];
  readonly cellOf: (raw: unknown) => Cell;
}

const heading =
  /^(?:fish|species|animals?|livestock|stock|inhabitants?|(?:fish|species|common|trade|scientific|latin) names?|names?)$/i;

/**
 * The names in a cell, a column or a row, in the order given. Blank cells and a first row of heading words are left
 * out; a bare 0 is how some hosts send a blank. Any other number, and an error, is refused with its row.
 */
export function readFish({ fish, cellOf }: FishRange): Result<readonly string[], Problem> {
  const cells = asLine(fish);
  if (cells === undefined) {
    return refuse({ code: 'not-a-line', field: 'fish', rows: fish.length, columns: fish[0]?.length ?? 0 });
  }
  const names: string[] = [];
  for (const [i, raw] of cells.entries()) {
    const cell = cellOf(raw);
    if (cell === null || cell === 0 || isBlank(cell)) continue;
    if (i === 0 && cells.length > 1 && typeof cell === 'string' && heading.test(cell.trim())) continue;
    const read = namesIn(cell, cells.length > 1 ? { row: i + 1 } : { field: 'fish' });
    if (!read.ok) return read;
    for (const name of read.value) names.push(name);
  }
  return ok(names);
}

function asLine(range: readonly (readonly unknown[])[]): readonly unknown[] | undefined {
  const [first = []] = range;
  if (range.length === 1) return first;
  return first.length === 1 ? range.map(([cell]) => cell) : undefined;
}

function namesIn(cell: Exclude<Cell, null>, at: Place): Result<readonly string[], Problem> {
  if (typeof cell === 'object') return refuse(misplaced(cell, at));
  const names = typeof cell === 'string' ? fishNames(cell) : [];
  const number = typeof cell === 'string' ? names.find(isNumber) : cell;
  return number === undefined ? ok(names) : refuse({ code: 'not-a-value', at, given: shown(number), kind: 'fish' });
}

function isNumber(name: string): boolean {
  return Number.isFinite(Number(name)) || (/\p{N}/u.test(name) && !/\p{L}/u.test(name));
}
