import { type BookCell, type BookSheet, type CellRange, type CellValue, isCellError } from '../../sheet/index.js';
import type { Cell } from '../../engine/index.js';

/** What stands in a cell of a sheet, counted from 0; null where nothing does. */
export function valueAt(sheet: BookSheet, row: number, column: number): CellValue {
  return sheet.rows[row]?.[column]?.value ?? null;
}

/** Whether a cell shows nothing. */
export function isBlankCell(sheet: BookSheet, row: number, column: number): boolean {
  const value = sheet.rows[row]?.[column]?.value ?? null;
  return value === null || (typeof value === 'string' && value.trim() === '');
}

/** Names and headings are at most this long; a longer text is a sentence. */
const longest = 60;

/** A short text that somebody wrote into a cell, without spaces around it; '' for anything else. */
export function writtenText(sheet: BookSheet, row: number, column: number): string {
  const cell = sheet.rows[row]?.[column];
  if (cell === undefined || typeof cell.value !== 'string' || cell.formula !== undefined) return '';
  const text = cell.value.trim();
  return text.length <= longest ? text : '';
}

/** Whether a cell holds a QT formula. */
export function isAnswer(cell: BookCell | undefined): boolean {
  return cell?.formula !== undefined && /(?:^|[^a-z\d])QT[._][a-z]/i.test(cell.formula);
}

/** A number, or a text with digits in it such as "200 L". */
export function saysNumber(value: CellValue): boolean {
  return typeof value === 'number' || (typeof value === 'string' && /\d/.test(value));
}

/** A rectangle that `cellBlock` cut out holds cells already. */
export const cellOf = (raw: unknown): Cell => (raw ?? null) as Cell;

/** The cells of a rectangle as the engine reads them, row by row. */
export function cellBlock(sheet: BookSheet, { firstRow, firstColumn, lastRow, lastColumn }: CellRange): Cell[][] {
  const rows: Cell[][] = [];
  for (let row = firstRow; row <= lastRow; row++) {
    const cells: Cell[] = [];
    for (let column = firstColumn; column <= lastColumn; column++) {
      const value = valueAt(sheet, row, column);
      cells.push(isCellError(value) ? { error: value.basicValue } : value);
    }
    rows.push(cells);
  }
  return rows;
}
