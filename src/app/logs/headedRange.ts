import type { BookSheet, CellRange } from '../../sheet/index.js';
import type { HeadedBlock } from './headedBlocks.js';
import { lastLogRow } from './lastLogRow.js';

interface HeadedRange {
  readonly sheet: BookSheet;
  readonly block: HeadedBlock;
  readonly filled: readonly CellRange[];
  /** What else stands on the sheet: cards, tables, answers. */
  readonly blocks: readonly CellRange[];
}

/** The cells of a log from its headings to its last row, above whatever stands below it. */
export function headedRange({ sheet, block, filled, blocks }: HeadedRange): CellRange {
  const { headingRow, firstColumn, lastColumn } = block;
  const below = blocks.filter(
    (other) => other.firstRow > headingRow && other.firstColumn <= lastColumn && firstColumn <= other.lastColumn,
  );
  const end = Math.min(sheet.rows.length, ...below.map(({ firstRow }) => firstRow));
  return { firstRow: headingRow, firstColumn, lastRow: lastLogRow({ sheet, block, filled, end }), lastColumn };
}
