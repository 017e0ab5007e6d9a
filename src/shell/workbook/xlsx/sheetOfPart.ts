import { FileProblem } from '../../zip/fileProblem.js';
import type { CellRange } from '../../address/cellRange.js';
import type { BookCell, BookSheet } from '../book.js';
import { bookLimits } from '../bookLimits.js';
import { from1900 } from '../from1900.js';
import { isDateFormat } from '../isDateFormat.js';
import { rangeIn } from '../rangeIn.js';
import { type CellCount, SheetGrid } from '../sheetGrid.js';
import { readXml, type XmlAttributes } from '../xml/readXml.js';
import { cellPlace } from './cellPlace.js';
import { putColumnWidths } from './putColumnWidths.js';
import { SharedFormulas } from './sharedFormulas.js';
import { spreadsheetPrefixes } from './spreadsheetPrefixes.js';
import { storedValue } from './storedValue.js';
import type { SheetPart } from './workbookPart.js';

/** What the sheets of a workbook share. */
export interface Shared {
  readonly strings: readonly string[];
  readonly formats: readonly (string | undefined)[];
  /** Values of `cm` that mark a dynamic array. */
  readonly dynamic: ReadonlySet<string>;
  readonly date1904: boolean;
  readonly count: CellCount;
}

/** Elements that speak of widths; each may speak of all columns. */
const mostColumns = 2000;
const dateFormat = 'yyyy-mm-dd hh:mm';

/** One sheet of an xlsx file. */
export function sheetOfPart(bytes: Uint8Array, sheet: SheetPart, shared: Shared): BookSheet {
  const reader = new SheetReader(new SheetGrid(sheet.name, shared.count), shared);
  readXml(bytes, sheet.part, reader);
  const widths = reader.widths.slice(0, reader.grid.lastColumn + 1);
  return { name: sheet.name, hidden: sheet.hidden, rows: reader.grid.rows, merged: reader.merged, widths };
}

class SheetReader {
  readonly prefixes = spreadsheetPrefixes;
  readonly merged: CellRange[] = [];
  readonly widths: (number | undefined)[] = [];
  readonly #formulas = new SharedFormulas();
  #row = -1;
  #column = -1;
  #cell: XmlAttributes | undefined;
  #formula: XmlAttributes | undefined;
  #inside: 'value' | 'formula' | 'inline' | undefined;
  #value: string | undefined;
  #formulaText = '';
  #inline = '';
  #aloud = 0;
  #columns = 0;

  constructor(
    readonly grid: SheetGrid,
    private readonly shared: Shared,
  ) {}

  open(element: string, attributes: XmlAttributes): void {
    if (element === 'c') this.#beginCell(attributes);
    else if (element === 'v' && this.#cell !== undefined) [this.#inside, this.#value] = ['value', ''];
    else if (element === 'f' && this.#cell !== undefined) [this.#inside, this.#formula] = ['formula', attributes];
    else if (element === 'row') this.#beginRow(attributes['r']);
    else if (element === 'rPh') this.#aloud++;
    else if (element === 't' && this.#cell !== undefined && this.#aloud === 0) this.#inside = 'inline';
    else if (element === 'col' && ++this.#columns <= mostColumns) putColumnWidths(this.widths, attributes);
    else if (element === 'mergeCell' && this.merged.length < bookLimits.listed) {
      const range = rangeIn(attributes['ref']);
      if (range !== undefined) this.merged.push(range);
    }
  }

  text(text: string): void {
    if (this.#inside === 'value') this.#value = (this.#value ?? '') + text;
    else if (this.#inside === 'formula') this.#formulaText += text;
    else if (this.#inside === 'inline') this.#inline += text;
  }

  close(element: string): void {
    if (element === 'c') this.#endCell();
    else if (element === 'rPh') this.#aloud--;
    else if (element === 'v' || element === 'f' || element === 't') this.#inside = undefined;
  }

  #beginRow(stated: string | undefined): void {
    this.#row = stated === undefined ? this.#row + 1 : Number(stated) - 1;
    this.#column = -1;
    if (!(this.#row >= 0)) throw misplaced(this.grid.name, stated ?? '');
  }

  #beginCell(attributes: XmlAttributes): void {
    const stated = attributes['r'];
    if (stated === undefined) this.#column++;
    else {
      const place = cellPlace(stated);
      if (place < 0) throw misplaced(this.grid.name, stated);
      this.#row = Math.floor(place / bookLimits.columns);
      this.#column = place % bookLimits.columns;
    }
    this.#cell = attributes;
    this.#formula = this.#value = this.#inside = undefined;
    this.#formulaText = this.#inline = '';
  }

  #endCell(): void {
    const attributes = this.#cell;
    if (attributes === undefined) return;
    this.#cell = undefined;
    const type = attributes['t'];
    let format = this.shared.formats[Number(attributes['s'] ?? 0)];
    const value = storedValue({ type, text: this.#value, inline: this.#inline }, this.shared.strings);
    const formula = this.#formula === undefined ? undefined : this.#formulaOf(this.#formula);
    if (value === null && formula === undefined) {
      if (format !== undefined) this.grid.putBlank(this.#row, this.#column, format);
      return;
    }
    if (type === 'd' && typeof value === 'number' && !isDateFormat(format)) format = dateFormat;
    const counted = this.shared.date1904 && type !== 'd' ? from1900(value, format) : value;
    const cell: BookCell = format === undefined ? { value: counted } : { value: counted, format };
    this.grid.put(
      this.#row,
      this.#column,
      formula === undefined ? cell : { ...cell, ...formula, ...this.#fills(attributes) },
    );
  }

  #formulaOf(attributes: XmlAttributes): { formula: string } | undefined {
    const shares = attributes['t'] === 'shared';
    const text = this.#formulaText.replace(/^\s*=/, '');
    const formula = shares
      ? this.#formulas.at({ index: attributes['si'] ?? '', text, row: this.#row, column: this.#column })
      : text;
    return formula === '' ? undefined : { formula };
  }

  #fills(attributes: XmlAttributes): { fills?: CellRange; dynamic?: boolean } {
    if (this.#formula?.['t'] !== 'array') return {};
    const own = { firstRow: this.#row, firstColumn: this.#column, lastRow: this.#row, lastColumn: this.#column };
    const fills = rangeIn(this.#formula['ref']) ?? own;
    return this.shared.dynamic.has(attributes['cm'] ?? '') ? { fills, dynamic: true } : { fills };
  }
}

function misplaced(sheet: string, place: string): FileProblem {
  return new FileProblem(
    `The file is damaged: its sheet ${JSON.stringify(sheet)} has a cell at ${JSON.stringify(place.slice(0, 20))}, which is no place of a sheet.`,
  );
}
