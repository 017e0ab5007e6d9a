import { isInside, type CellRange } from '../address/cellRange.js';
import { sheetLimits } from '../address/sheetLimits.js';
import type { BookSheet } from '../book/book.js';
import { isDateFormat } from '../book/isDateFormat.js';
import type { CellValue } from '../cell/cellValue.js';
import type { Grid } from '../evaluate/value.js';

/** Grids smaller than this are read again each time. */
const smallestKept = 64;
const mostKept = 200;

/** The values of a sheet, as stored and as worked out since. */
export class SheetCells {
  /** By row and column: what was worked out. */
  private readonly fresh = new Map<number, Map<number, CellValue>>();
  private readonly kept = new Map<string, { readonly range: CellRange; readonly grid: Grid }>();
  private rowsUsed: number;
  private columnsUsed: number;

  constructor(private readonly sheet: BookSheet) {
    this.rowsUsed = sheet.rows.length;
    this.columnsUsed = sheet.rows.reduce((most, row) => Math.max(most, row?.length ?? 0), 0);
  }

  value(row: number, column: number): CellValue {
    const fresh = this.fresh.get(row)?.get(column);
    return fresh === undefined ? (this.sheet.rows[row]?.[column]?.value ?? null) : fresh;
  }

  set(row: number, column: number, value: CellValue): void {
    const cells = this.fresh.get(row) ?? new Map<number, CellValue>();
    this.fresh.set(row, cells.set(column, value));
    this.rowsUsed = Math.max(this.rowsUsed, row + 1);
    this.columnsUsed = Math.max(this.columnsUsed, column + 1);
    for (const [key, { range }] of this.kept) if (isInside(range, row, column)) this.kept.delete(key);
  }

  /** Whether the cells in a column of a range show days: its first cell that holds a number decides. */
  showsDays({ firstRow, firstColumn, lastRow }: CellRange, column: number): boolean {
    const last = Math.min(lastRow, this.sheet.rows.length - 1);
    for (let row = firstRow; row <= last; row += 1) {
      const cell = this.sheet.rows[row]?.[firstColumn + column];
      if (typeof cell?.value === 'number') return isDateFormat(cell.format);
    }
    return false;
  }

  /** Whole columns or rows as far as the sheet is in use; at least one cell. */
  inUse(range: CellRange): CellRange {
    const { firstRow, firstColumn, lastRow, lastColumn } = range;
    const ends = (last: number, limit: number, used: number, first: number): number =>
      last === limit - 1 ? Math.max(first, used - 1) : last;
    return {
      firstRow,
      firstColumn,
      lastRow: ends(lastRow, sheetLimits.rows, this.rowsUsed, firstRow),
      lastColumn: ends(lastColumn, sheetLimits.columns, this.columnsUsed, firstColumn),
    };
  }

  /** The values of a range; the same grid as before where none of them changed. */
  grid(range: CellRange): Grid {
    const { firstRow, firstColumn, lastRow, lastColumn } = range;
    const key = `${firstRow},${firstColumn},${lastRow},${lastColumn}`;
    const known = this.kept.get(key);
    if (known !== undefined) return known.grid;
    const width = lastColumn - firstColumn + 1;
    const grid = Array.from({ length: lastRow - firstRow + 1 }, (_, i) => {
      const row = firstRow + i;
      const [fresh, stored] = [this.fresh.get(row), this.sheet.rows[row]];
      const cells = new Array<CellValue>(width);
      for (let c = 0; c < width; c += 1) {
        const worked = fresh?.get(firstColumn + c);
        cells[c] = worked === undefined ? (stored?.[firstColumn + c]?.value ?? null) : worked;
      }
      return cells;
    });
    if (grid.length * width >= smallestKept) {
      if (this.kept.size >= mostKept) this.kept.clear();
      this.kept.set(key, { range, grid });
    }
    return grid;
  }
}
