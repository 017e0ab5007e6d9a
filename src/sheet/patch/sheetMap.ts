import type { CellRange } from '../address/cellRange.js';
import type { ElementAt } from '../xml/elementAt.js';

/** `<f>`, `<v>` or `<is>` of a cell, with the text in it. */
export interface TextAt extends ElementAt {
  text: string;
}

export interface CellAt extends ElementAt {
  readonly row: number;
  readonly column: number;
  formula?: TextAt;
  value?: TextAt;
  inline?: TextAt;
}

/** A row that is written to. */
export interface RowAt extends ElementAt {
  readonly row: number;
  /** The columns of all its cells and where they begin, in order: numbers, for there are many. */
  readonly columns: number[];
  readonly starts: number[];
  /** Columns of the cells that have no address and follow the one before. */
  readonly unstated: Set<number>;
  /** Where its last cell ends. */
  cellsTo: number;
  /** The cells that are written to, by their columns. */
  readonly cells: Map<number, CellAt>;
}

export interface SheetMap {
  readonly data: ElementAt;
  readonly dimension?: ElementAt;
  /** The numbers of all rows and where they begin, in order. */
  readonly rowNumbers: readonly number[];
  readonly rowStarts: readonly number[];
  /** The rows that are written to, by their numbers. */
  readonly rows: ReadonlyMap<number, RowAt>;
  /** Cells whose formula fills a range, in the whole sheet. */
  readonly arrays: readonly { readonly row: number; readonly column: number; readonly range: CellRange }[];
  /** Cells of each shared formula, by its number. */
  readonly shared: ReadonlyMap<string, readonly CellAt[]>;
  /** The cell of each shared formula that has its text. */
  readonly masters: ReadonlyMap<string, CellAt>;
  /** Styles of columns. */
  readonly columns: readonly { readonly first: number; readonly last: number; readonly style: string }[];
}
