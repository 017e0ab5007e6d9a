import { type BookSheet, type CellRange, isDateFormat } from '../../sheet/index.js';

/** Rows below a heading that are looked at. */
const rowsSeen = 60;

/**
 * The name of the style that sets the heading of a log off, which stands as what is below it does; undefined for a cell
 * that is none, or is set off by its own file.
 */
export function headingName(
  { rows }: BookSheet,
  headings: readonly CellRange[],
  { row, column }: { readonly row: number; readonly column: number },
): string | undefined {
  if (!headings.some((range) => isIn(range, row, column))) return undefined;
  const look = rows[row]?.[column]?.look;
  if (look?.bold === true || look?.fill !== undefined || look?.borders !== undefined) return undefined;
  const first = rows
    .slice(row + 1, row + 1 + rowsSeen)
    .map((cells) => cells?.[column])
    .find((cell) => cell !== undefined && cell.value !== null);
  return typeof first?.value === 'number' && !isDateFormat(first.format) ? 'numberHeading' : 'heading';
}

function isIn(range: CellRange, row: number, column: number): boolean {
  return range.firstRow <= row && row <= range.lastRow && range.firstColumn <= column && column <= range.lastColumn;
}
