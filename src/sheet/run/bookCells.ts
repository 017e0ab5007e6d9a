import type { Book } from '../book/book.js';
import { Area, type Grid } from '../evaluate/value.js';
import { UnreadableFormula } from '../formula/formulaNode.js';
import { SheetCells } from './sheetCells.js';

const mostCells = 4_000_000;

/** The cells of all sheets of a book, by their names in any case. */
export class BookCells {
  private readonly sheets: ReadonlyMap<string, SheetCells>;
  private readonly names: ReadonlyMap<string, string>;

  constructor({ sheets }: Pick<Book, 'sheets'>) {
    this.sheets = new Map(sheets.map((sheet) => [sheet.name, new SheetCells(sheet)]));
    this.names = new Map(sheets.map(({ name }) => [name.toLowerCase(), name]));
  }

  sheetNamed(name: string): string | undefined {
    return this.names.get(name.toLowerCase());
  }

  sheet(name: string): SheetCells {
    const cells = this.sheets.get(name);
    if (cells === undefined) throw new Error(`no sheet ${name}`);
    return cells;
  }

  /** The area that is read of one: whole columns, and ranges that reach over millions of cells, end where the sheet is in use. */
  inUse(area: Area): Area {
    const isHuge = area.rowCount * area.columnCount > mostCells;
    if (!area.isWhole && !isHuge) return area;
    const read = new Area(area.sheet, this.sheet(area.sheet).inUse(area.range));
    if (read.rowCount * read.columnCount <= mostCells) return read;
    throw new UnreadableFormula('reads millions of cells at once, which is not supported here');
  }

  grid(area: Area): Grid {
    return this.sheet(area.sheet).grid(area.range);
  }
}
