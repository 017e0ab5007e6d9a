import type { Cell } from '../src/engine/index.js';

/**
 * A plain cell from whatever a host puts into one: numbers, texts, nothing, rich cells that carry their plain value, and
 * errors in two shapes.
 */
export function cellOf(raw: unknown): Cell {
  if (typeof raw === 'number') return Number.isFinite(raw) ? raw : { error: '#NUM!' };
  if (typeof raw === 'string' || typeof raw === 'boolean') return raw;
  if (raw === null || raw === undefined) return null;
  if (Array.isArray(raw)) return singleCell(raw);
  return typeof raw === 'object' ? richCell(raw) : String(raw);
}

interface RichCell {
  readonly type?: unknown;
  readonly basicType?: unknown;
  readonly basicValue?: unknown;
  /** Where the host hands over its own error object. */
  readonly code?: unknown;
}

function richCell({ type, basicType, basicValue, code }: RichCell): Cell {
  if (type === 'Error' || basicType === 'Error') return { error: errorName(basicValue) };
  if (typeof code === 'string' && code.startsWith('#')) return { error: errorName(code) };
  if (type === 'Empty' || basicType === 'Empty') return null;
  return typeof basicValue === 'object' && basicValue !== null ? { error: '#VALUE!' } : richValue(basicValue);
}

function richValue(value: unknown): Cell {
  return value === undefined ? { error: '#VALUE!' } : cellOf(value);
}

/** Codes as hosts spell them; the sentence about the cell repeats no other text as one. */
const errorCode = /^#[A-Z0-9/_]{1,20}[!?]?$/;

function errorName(value: unknown): string {
  return typeof value === 'string' && errorCode.test(value) ? value : '#VALUE!';
}

/** Hosts wrap one cell in two brackets; more than one where one is wanted is for the reader to refuse. */
function singleCell(rows: readonly unknown[]): Cell {
  const cells = rows.flatMap((row) => (Array.isArray(row) ? (row as unknown[]) : [row]));
  return cells.length === 1 ? cellOf(cells[0]) : cells.length === 0 ? null : { cells: cells.length };
}
