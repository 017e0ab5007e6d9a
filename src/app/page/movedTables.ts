import type { BookTable } from '../../sheet/index.js';

export interface RowsMoved {
  readonly sheet: string;
  readonly firstRow: number;
  readonly count: number;
  readonly how: 'put in' | 'taken out';
}

/** Named tables after rows were put in above or within them, or taken out. */
export function movedTables(tables: readonly BookTable[], moved: RowsMoved): BookTable[] {
  return tables.map((table) => (table.sheet === moved.sheet ? shifted(table, moved) : table));
}

function shifted(table: BookTable, { firstRow: at, count, how }: RowsMoved): BookTable {
  const { firstRow, lastRow } = table.range;
  const place = (row: number): number => {
    if (row < at) return row;
    return how === 'put in' ? row + count : Math.max(at, row - count);
  };
  // Its last row goes with the row itself: rows put in right below it are not within it.
  const last = how === 'taken out' && lastRow >= at && lastRow < at + count ? at - 1 : place(lastRow);
  return { ...table, range: { ...table.range, firstRow: place(firstRow), lastRow: Math.max(place(firstRow), last) } };
}
