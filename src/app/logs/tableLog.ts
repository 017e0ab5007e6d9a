import type { BookSheet, BookTable, CellRange } from '../../sheet/index.js';
import { headedRange } from './headedRange.js';
import { headingKinds } from './headingKinds.js';

interface TableOfSheet {
  readonly sheet: BookSheet;
  readonly table: BookTable;
  readonly filled: readonly CellRange[];
  readonly blocks: readonly CellRange[];
}

/**
 * The log in a named table; null where its headings are not those of one. A totals row is left out, and rows that were
 * written below the table still belong to the log.
 */
export function tableLog({
  sheet,
  table: { range, headings, totals },
  filled,
  blocks,
}: TableOfSheet): CellRange | null {
  const { firstRow, firstColumn, lastColumn } = range;
  const kinds = headings ? headingKinds({ sheet, row: firstRow, filled }) : null;
  const own = kinds?.slice(firstColumn, lastColumn + 1) ?? [];
  const [time, copper] = [own.indexOf('time'), own.indexOf('copper')];
  if (time === -1 || copper === -1) return null;
  if (totals) return { ...range, lastRow: range.lastRow - 1 };
  const block = {
    headingRow: firstRow,
    firstColumn,
    lastColumn,
    time: firstColumn + time,
    copper: firstColumn + copper,
  };
  const written = headedRange({ sheet, block, filled, blocks });
  return { ...range, lastRow: Math.max(range.lastRow, written.lastRow) };
}
