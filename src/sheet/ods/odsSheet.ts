import type { CellRange } from '../address/cellRange.js';
import { type BookCell, type BookSheet } from '../book/book.js';
import { bookLimits } from '../book/bookLimits.js';
import { type CellCount, SheetGrid } from '../book/sheetGrid.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { odsCell } from './odsCell.js';
import { OdsLayout } from './odsLayout.js';
import type { OdsStyles } from './odsStyles.js';
import { spanAt, timesRepeated } from './odsSpans.js';

/** Blank cells repeated more often than this are the rest of the sheet, not places to fill in. */
const farthestBlank = 1000;

interface Laid {
  readonly column: number;
  readonly cell: BookCell;
}

/** One sheet of an .ods file, filled as its elements are met. */
export class OdsSheet {
  readonly #grid: SheetGrid;
  readonly #merged: CellRange[] = [];
  readonly #widths: (number | undefined)[] = [];
  readonly #columnStyles: (string | undefined)[] = [];
  readonly #hidden: boolean;
  readonly #layout: OdsLayout | undefined;
  #row = 0;
  #column = 0;
  #rowStyle: string | undefined;
  #repeated = 1;
  #cells: Laid[] = [];

  constructor(
    attributes: XmlAttributes,
    private readonly book: { readonly styles: OdsStyles; readonly count: CellCount; readonly date1904: boolean },
  ) {
    this.#grid = new SheetGrid(attributes['table:name'] ?? '', book.count);
    this.#layout = book.styles.looks === undefined ? undefined : new OdsLayout(book.styles);
    this.#hidden = book.styles.hidden(attributes['table:style-name']);
  }

  get name(): string {
    return this.#grid.name;
  }

  putColumns(attributes: XmlAttributes): void {
    const width = this.book.styles.width(attributes['table:style-name']);
    const style = attributes['table:default-cell-style-name'];
    const last = Math.min(this.#widths.length + timesRepeated(attributes, 'columns'), bookLimits.columns);
    this.#layout?.columns(this.#widths.length, last, attributes);
    for (let column = this.#widths.length; column < last; column++) {
      this.#widths.push(width);
      this.#columnStyles.push(style);
    }
  }

  beginRow(attributes: XmlAttributes): void {
    this.#rowStyle = attributes['table:default-cell-style-name'];
    this.#repeated = timesRepeated(attributes, 'rows');
    this.#layout?.rows(this.#row, this.#repeated, attributes);
    this.#column = 0;
    this.#cells = [];
  }

  endRow(): void {
    const cells = this.#cells;
    for (let row = this.#row; cells.length > 0 && row < this.#row + this.#repeated; row++) {
      for (const { column, cell } of cells) {
        if (isBlank(cell)) this.#grid.putBlank(row, column, { format: cell.format ?? '', look: cell.look });
        else this.#grid.put(row, column, cell);
      }
    }
    this.#row += this.#repeated;
  }

  putCell(attributes: XmlAttributes, shown: string | undefined): void {
    const repeated = timesRepeated(attributes, 'columns');
    const style = attributes['table:style-name'] ?? this.#rowStyle ?? this.#columnStyles[this.#column];
    const place = { row: this.#row, column: this.#column };
    const { styles, date1904 } = this.book;
    const look = styles.looks?.look(style);
    const cell = odsCell(attributes, { shown, place, format: styles.format(style), look, date1904 });
    const span = spanAt(place, attributes, 'merged');
    if (span !== undefined && this.#merged.length < bookLimits.listed) this.#merged.push(span);
    const blanks = this.#grid.keepsBlanks && repeated <= farthestBlank && this.#repeated <= farthestBlank;
    const kept = cell !== undefined && (blanks || !isBlank(cell));
    for (let column = this.#column; kept && column < this.#column + repeated; column++) {
      if (column > bookLimits.columns) break;
      this.#cells.push({ column, cell });
    }
    this.#column += repeated;
  }

  sheet(): BookSheet {
    const widths = this.#widths.slice(0, this.#grid.lastColumn + 1);
    const layout = this.#layout === undefined ? {} : { layout: this.#layout.layout() };
    return { name: this.name, hidden: this.#hidden, rows: this.#grid.rows, merged: this.#merged, widths, ...layout };
  }
}

function isBlank(cell: BookCell): boolean {
  return cell.value === null && cell.formula === undefined;
}
