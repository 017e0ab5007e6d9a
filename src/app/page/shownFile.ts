import type { Book, BookTable, EnteredFormula } from '../../sheet/index.js';

/** What the grid shows. */
export interface ShownFile {
  readonly name: string;
  readonly opened: { readonly bytes: Uint8Array; readonly book: Book };
  /** By cellKey: those of the file, and those typed since in which tables or names are named. */
  readonly formulas: Map<string, CellFormula>;
  /** The named tables of the file, as far down as they reach now. */
  tables: readonly BookTable[];
  /** Rows or columns were put in or taken out. */
  isMoved: boolean;
  /** Its data is invented: edits may be lost without a question. */
  readonly isDemo?: true;
}

/** A formula in two texts. */
export interface CellFormula {
  /** As people write it. */
  readonly typed: EnteredFormula;
  /** As the grid computes it, which knows neither tables nor names; null: it cannot compute it, the stored value is shown. */
  readonly plain: EnteredFormula | null;
  /** Whether it stands so in the file. */
  readonly isStored: boolean;
}
