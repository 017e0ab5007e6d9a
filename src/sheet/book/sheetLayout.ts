import type { CellLook } from './cellLook.js';

/** How a sheet is laid out, apart from its cells. Rows and columns count from 0. */
export interface SheetLayout {
  /** Heights of rows in pixels where the file says them. */
  readonly heights: readonly (number | undefined)[];
  /** Rows whose height a person set: they do not grow with what is in them. */
  readonly fixedRows: ReadonlySet<number>;
  readonly defaultHeight?: number;
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenColumns: ReadonlySet<number>;
  /** How a blank cell without a style of its own looks: as its row says, or else as its column says. */
  readonly rowStyles: ReadonlyMap<number, LineStyle>;
  readonly columnStyles: ReadonlyMap<number, LineStyle>;
  /** How many rows and columns stay in view. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  readonly gridlines: boolean;
  /** The colour of its tab. */
  readonly tab?: string;
}

export interface LineStyle {
  readonly look?: CellLook;
  readonly format?: string;
}
