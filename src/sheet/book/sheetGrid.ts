import { FileProblem } from '../zip/fileProblem.js';
import { addressOf } from '../address/addressOf.js';
import type { BookCell } from './book.js';
import { bookLimits } from './bookLimits.js';
import type { CellLook } from './cellLook.js';

/** How many cells a whole book has so far, shared by its sheets. */
export interface CellCount {
  filled: number;
  blank: number;
}

const mostBlanks = 2_000_000;

/** Cells in rows; a lone cell far out costs no more than one at the top. */
export class SheetGrid {
  readonly rows: (BookCell | undefined)[][] = [];
  lastColumn = -1;
  readonly #blanks = new Map<CellLook | undefined, Map<string, BookCell>>();

  constructor(
    readonly name: string,
    private readonly count: CellCount,
  ) {}

  put(row: number, column: number, cell: BookCell): void {
    if (row >= bookLimits.rows || column >= bookLimits.columns) {
      throw new FileProblem(
        `The file is damaged: its sheet ${JSON.stringify(this.name)} has a cell beyond ${addressOf(bookLimits.rows - 1, bookLimits.columns - 1)}, the last a sheet can have.`,
      );
    }
    if (++this.count.filled > bookLimits.cells) {
      throw new FileProblem(
        `The file holds more than ${bookLimits.cells / 1_000_000} million filled cells; split the log over several files.`,
      );
    }
    this.#lay(row, column, cell);
  }

  /** Whether blank cells are still kept. */
  get keepsBlanks(): boolean {
    return this.count.blank < mostBlanks;
  }

  /** An empty cell with a number format or a look. Beyond two million they are dropped, as they hold nothing. */
  putBlank(
    row: number,
    column: number,
    style: { readonly format: string; readonly look?: CellLook | undefined },
  ): void {
    if (row >= bookLimits.rows || column >= bookLimits.columns || ++this.count.blank > mostBlanks) return;
    this.#lay(row, column, this.#blank(style.format, style.look));
  }

  /** Blank cells that are alike share one object. */
  #blank(format: string, look: CellLook | undefined): BookCell {
    let byFormat = this.#blanks.get(look);
    if (byFormat === undefined) this.#blanks.set(look, (byFormat = new Map()));
    let blank = byFormat.get(format);
    if (blank === undefined) {
      blank = { value: null, ...(format === '' ? {} : { format }), ...(look === undefined ? {} : { look }) };
      byFormat.set(format, blank);
    }
    return blank;
  }

  #lay(row: number, column: number, cell: BookCell): void {
    let cells = this.rows[row];
    if (cells === undefined) this.rows[row] = cells = [];
    cells[column] = cell;
    if (column > this.lastColumn) this.lastColumn = column;
  }
}
