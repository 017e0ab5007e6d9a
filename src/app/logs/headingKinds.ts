import { type BookSheet, type CellRange, isInside } from '../../sheet/index.js';
import { type ColumnKind, columnKinds, headingKey } from '../../engine/index.js';
import { writtenText } from './cellsAt.js';

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
    return text === '' || filled.some((range) => isInside(range, row, column)) ? null : columnKindOf(text);
  });
  return kinds.includes('time') && kinds.includes('copper') ? kinds : null;
}

/** What else is tested in sea water, in the same units. */
const otherTests =
  /\b(?:nitrates?|nitrites?|no[23]|phosphates?|po4|alk(?:alinity)?|kh|dkh|calcium|magnesium|iodine|oxygen|o2|orp|salinity)\b/;

/** What a column with this heading is read as in a log; null: unknown. A test of something else is not copper. */
export function columnKindOf(text: string): ColumnKind | null {
  const key = headingKey(text);
  const kind = columnKinds.find(({ words }) => words.test(key))?.kind ?? null;
  return kind === 'copper' && otherTests.test(key) ? null : kind;
}
