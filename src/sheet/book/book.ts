import type { CellRange } from '../address/cellRange.js';
import type { StoredFormula } from '../cell/formulaText.js';
import type { CellValue } from '../cell/cellValue.js';
import type { CellLook } from './cellLook.js';
import type { SheetLayout } from './sheetLayout.js';

/** A file of rows as read, whatever its format. */
export interface Book {
  /** `xlsx` stands for `.xlsm` too. */
  readonly kind: 'xlsx' | 'ods' | 'csv';
  readonly sheets: readonly BookSheet[];
  readonly names: readonly DefinedName[];
  readonly tables: readonly BookTable[];
  /** Whether the file counts its days from 1904. `BookCell.value` always counts from 1900. */
  readonly date1904: boolean;
  /** What was worked out about the file, for its owner to know. */
  readonly remarks: readonly string[];
  /** The look of a cell without any style. Present only if looks were asked for. */
  readonly plain?: CellLook;
}

export interface BookSheet {
  readonly name: string;
  readonly hidden: boolean;
  /** From row 1 and column A on; a row or a cell that is not there is undefined. */
  readonly rows: readonly (readonly (BookCell | undefined)[] | undefined)[];
  readonly merged: readonly CellRange[];
  /** Widths of columns in pixels where the file says them. */
  readonly widths: readonly (number | undefined)[];
  readonly layout?: SheetLayout;
}

export interface BookCell {
  /** The stored value; days of a cell with a date format count from 1900, also in a file that counts from 1904. */
  readonly value: CellValue;
  /** In the form that an .xlsx file stores, also for an .ods file. */
  readonly formula?: StoredFormula;
  /** The rows and columns that an array formula fills, on its first cell alone. */
  readonly fills?: CellRange;
  /** Whether the array formula may grow and shrink (stored as a dynamic array). */
  readonly dynamic?: boolean;
  /** The number format, such as `yyyy-mm-dd hh:mm`. */
  readonly format?: string;
  /** Cells that look alike share one object; undefined: as `Book.plain`. */
  readonly look?: CellLook;
}

export interface DefinedName {
  readonly name: string;
  /** What it stands for, such as `Log!$A$1:$F$60`. */
  readonly formula: StoredFormula;
  /** The only sheet that knows it; undefined: all do. */
  readonly sheet?: string;
}

/** A named table of a sheet. */
export interface BookTable {
  readonly name: string;
  readonly sheet: string;
  /** With its heading row and its row of totals. */
  readonly range: CellRange;
  readonly columns: readonly string[];
  readonly headings: boolean;
  readonly totals: boolean;
}
