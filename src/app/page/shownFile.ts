import type { Book, EnteredFormula } from '../../sheet/index.js';

/** What the file names, and the grid knows nothing about. */
export type Places = Pick<Book, 'names' | 'tables'>;

/** What the grid shows. */
export interface ShownFile {
  readonly name: string;
  readonly opened: { readonly bytes: Uint8Array; readonly book: Book };
  /** By cellKey: those of the file, and those typed since in which tables or names are named. */
  readonly formulas: Map<string, CellFormula>;
  /** The named tables and ranges of the file where they stand now; sheets have the names that they had in the file. */
  places: Places;
  /** Rows or columns were inserted or deleted. */
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
