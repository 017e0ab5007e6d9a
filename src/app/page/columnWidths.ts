import { type BookCell, type BookSheet, isCellError } from '../../sheet/index.js';

const [narrowest, widest] = [64, 320];
const pixelsOfALetter = 7;
const padding = 18;
/** Rows looked at: a log repeats itself. */
const rowsSeen = 300;

/** The width of each column in pixels: as the file says, else wide enough for what stands in it. */
export function columnWidths(sheet: BookSheet, columns: number): number[] {
  return Array.from({ length: columns }, (_, column) => sheet.widths[column] ?? fittingWidth(sheet, column));
}

function fittingWidth(sheet: BookSheet, column: number): number {
  const letters = sheet.rows.slice(0, rowsSeen).map((row) => lettersIn(row?.[column]));
  const longest = letters.reduce((most, count) => Math.max(most, count), 0);
  return Math.min(widest, Math.max(narrowest, longest * pixelsOfALetter + padding));
}

function lettersIn(cell: BookCell | undefined): number {
  if (cell === undefined || cell.value === null) return 0;
  if (isCellError(cell.value)) return cell.value.basicValue.length;
  if (typeof cell.value === 'number')
    return Math.max(cell.format?.length ?? 0, Math.min(String(cell.value).length, 10));
  return String(cell.value).length;
}
