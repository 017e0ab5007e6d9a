import type { BookSheet, CellRange } from '../../sheet/index.js';
import type { ColumnKind } from '../../engine/index.js';
import { columnKindOf } from './columnKindOf.js';
import { isWithin } from './isWithin.js';
import { writtenText } from './writtenText.js';

export interface SheetRow {
  readonly sheet: BookSheet;
  readonly row: number;
  readonly filled: readonly CellRange[];
}

/** All words that make a heading one of a time; most rows have none of them and need no closer look. */
const maybeTime = /date|when|time/i;

/** What the cells of a row would be as headings of a log, by column; null where the row heads none. */
export function headingKinds({ sheet, row, filled }: SheetRow): readonly (ColumnKind | null)[] | null {
  const cells = sheet.rows[row] ?? [];
  if (!cells.some((cell) => typeof cell?.value === 'string' && maybeTime.test(cell.value))) return null;
  const kinds = Array.from(cells, (_, column) => {
    const text = writtenText(sheet, row, column);
    return text === '' || filled.some((range) => isWithin(range, row, column)) ? null : columnKindOf(text);
  });
  return kinds.includes('time') && kinds.includes('copper') ? kinds : null;
}
