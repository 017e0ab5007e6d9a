import type { CellWrite } from './cellWrite.js';

/** The writes of one sheet by row and column; the last one of a cell counts. */
export type CellWrites = ReadonlyMap<number, ReadonlyMap<number, CellWrite>>;

/** Rows and columns in ascending order. */
export function cellWrites(writes: readonly CellWrite[]): CellWrites {
  const ordered = [...writes].sort((one, other) => one.row - other.row || one.column - other.column);
  const rows = new Map<number, Map<number, CellWrite>>();
  for (const write of ordered) {
    const row = rows.get(write.row) ?? new Map<number, CellWrite>();
    rows.set(write.row, row.set(write.column, write));
  }
  return rows;
}
