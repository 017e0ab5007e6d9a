import { cellKeyIn } from './cellKey.js';
import { sheetLimits } from './sheetLimits.js';

/** A rectangle of cells, counted from 0, both ends included. */
export interface CellRange {
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly lastRow: number;
  readonly lastColumn: number;
}

/** A cell of a book, its row and column counted from 0. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** `"B2:D9"` or `"B2"`, also with dollar signs, in numbers; undefined for what is no range of a sheet. */
export function rangeIn(text: string | undefined): CellRange | undefined {
  const range = cornersIn(text ?? '');
  return range && range.firstRow <= range.lastRow && range.firstColumn <= range.lastColumn ? range : undefined;
}

/** An address that the program itself wrote, in numbers; another one is a mistake in the program. */
export function cellRange(address: string): CellRange {
  const range = cornersIn(address);
  if (range === undefined) throw new Error(`not a range of cells: ${address}`);
  return range;
}

function cornersIn(text: string): CellRange | undefined {
  const [first = '', last = first, more] = text.split(':');
  const [from, to] = [first, last].map((corner) => cellKeyIn(corner.replace(/^\$?([A-Z]+)\$?(?=\d)/i, '$1')));
  if (from === undefined || to === undefined || more !== undefined) return undefined;
  return {
    firstRow: Math.floor(from / sheetLimits.columns),
    firstColumn: from % sheetLimits.columns,
    lastRow: Math.floor(to / sheetLimits.columns),
    lastColumn: to % sheetLimits.columns,
  };
}

/** The range of one cell. */
export function oneCell({ row, column }: { readonly row: number; readonly column: number }): CellRange {
  return { firstRow: row, firstColumn: column, lastRow: row, lastColumn: column };
}

/** Whether a cell is one of a range. */
export function isInside(range: CellRange, row: number, column: number): boolean {
  return row >= range.firstRow && row <= range.lastRow && column >= range.firstColumn && column <= range.lastColumn;
}

/** Whether two ranges have a cell in common. */
export function overlaps(a: CellRange, b: CellRange): boolean {
  return (
    a.firstRow <= b.lastRow && b.firstRow <= a.lastRow && a.firstColumn <= b.lastColumn && b.firstColumn <= a.lastColumn
  );
}

/** Visits the cells of a range, row by row. */
export function eachCell(range: CellRange, visit: (row: number, column: number) => void): void {
  for (let row = range.firstRow; row <= range.lastRow; row += 1) {
    for (let column = range.firstColumn; column <= range.lastColumn; column += 1) visit(row, column);
  }
}
