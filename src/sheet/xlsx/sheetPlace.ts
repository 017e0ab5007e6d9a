import { FileProblem } from '../zip/fileProblem.js';
import { cellKeyIn } from '../address/cellKey.js';
import { sheetLimits } from '../address/sheetLimits.js';

/** The current place in a sheet: a row or cell states its own address or follows the one before. */
export class SheetPlace {
  row = -1;
  column = -1;

  constructor(private readonly sheet: string) {}

  beginRow(stated: string | undefined): void {
    this.row = stated === undefined ? this.row + 1 : Number(stated) - 1;
    this.column = -1;
    if (!Number.isInteger(this.row) || this.row < 0) throw this.#misplaced(stated ?? '');
  }

  beginCell(stated: string | undefined): void {
    if (stated === undefined) {
      this.column++;
      return;
    }
    const place = cellKeyIn(stated);
    if (place === undefined) throw this.#misplaced(stated);
    this.row = Math.floor(place / sheetLimits.columns);
    this.column = place % sheetLimits.columns;
  }

  #misplaced(place: string): FileProblem {
    return new FileProblem(
      `The file is damaged: its sheet ${JSON.stringify(this.sheet)} has a cell at ${JSON.stringify(place.slice(0, 20))}, which is no place of a sheet.`,
    );
  }
}
