import type { RawRange } from '../src/engine/index.js';

/** A range argument as rows of cells. A host may send one cell bare, and nothing at all for an empty one. */
export function rangeOf(raw: unknown): RawRange {
  if (!Array.isArray(raw) || raw.length === 0) return [[Array.isArray(raw) || raw === undefined ? null : raw]];
  const rows: readonly unknown[] = raw;
  if (isEmpty(rows[0]) && rows.every(isEmpty)) return [[null]];
  return rows.every(Array.isArray)
    ? (rows as RawRange)
    : rows.map((row) => (Array.isArray(row) ? (row as unknown[]) : [row]));
}

function isEmpty(row: unknown): boolean {
  return Array.isArray(row) && row.length === 0;
}
