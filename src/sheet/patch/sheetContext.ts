import type { DateStyles } from './dateStyles.js';
import type { CellAt } from './sheetMap.js';

/** What the cells of one sheet need to know of the rest of the file. */
export interface SheetContext {
  readonly date1904: boolean;
  readonly dateStyles: DateStyles;
  sharedText(index: number): string | undefined;
  /** The attribute `cm` of a cell whose formula is a dynamic array. */
  dynamicMark(): string;
  /** Whether the formula of another cell fills this one once all is written. */
  isFilled(row: number, column: number): boolean;
  /** The cell of each shared formula that has its text, by its number. */
  readonly masters: ReadonlyMap<string, CellAt>;
  /** `<f>` of cells that take over a shared formula from a cell that loses it. */
  readonly heirs: ReadonlyMap<CellAt, string>;
}
