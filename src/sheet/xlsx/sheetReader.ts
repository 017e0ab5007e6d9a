import { type CellRange, rangeIn } from '../address/cellRange.js';
import type { CellValue } from '../cell/cellValue.js';
import type { BookCell } from '../book/book.js';
import { bookLimits } from '../book/bookLimits.js';
import type { CellLook } from '../book/cellLook.js';
import { from1900 } from '../book/from1900.js';
import { isDateFormat } from '../book/isDateFormat.js';
import type { CellCount, SheetGrid } from '../book/sheetGrid.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { CellFormulas } from './cellFormulas.js';
import type { Colours } from './colourOf.js';
import { digitWidth, putColumnWidths } from './columnWidths.js';
import { LayoutReader } from './layoutReader.js';
import { RichText } from './richText.js';
import { SheetPlace } from './sheetPlace.js';
import { spreadsheetPrefixes } from './spreadsheetPrefixes.js';
import { storedValue } from './storedValue.js';

/** The most elements with widths that are read; each may describe all columns. */
const mostColumns = 2000;
const dateFormat = 'yyyy-mm-dd hh:mm';

/** What the sheets of a workbook share. */
export interface SharedParts {
  readonly strings: readonly string[];
  readonly formats: readonly (string | undefined)[];
  /** Values of `cm` that mark a dynamic array. */
  readonly dynamic: ReadonlySet<string>;
  readonly date1904: boolean;
  readonly count: CellCount;
  /** Where looks were asked for. */
  readonly looks?: readonly CellLook[];
  readonly colours?: Colours;
}

/** Takes in the elements of a sheet part. */
export class SheetReader {
  readonly prefixes = spreadsheetPrefixes;
  readonly merged: CellRange[] = [];
  readonly widths: (number | undefined)[] = [];
  readonly layout: LayoutReader | undefined;
  readonly #formulas = new CellFormulas();
  readonly #at: SheetPlace;
  readonly #digit: number;
  #cell: XmlAttributes | undefined;
  #formula: XmlAttributes | undefined;
  #inside: 'value' | 'formula' | undefined;
  #value: string | undefined;
  #formulaText = '';
  #inline: RichText | undefined;
  #columns = 0;

  constructor(
    readonly grid: SheetGrid,
    private readonly shared: SharedParts,
  ) {
    this.#at = new SheetPlace(grid.name);
    const { looks, colours, formats } = shared;
    this.#digit = digitWidth(looks?.[0]);
    if (looks !== undefined && colours !== undefined) this.layout = new LayoutReader({ looks, colours, formats });
  }

  open(element: string, attributes: XmlAttributes): void {
    if (element === 'c') this.#beginCell(attributes);
    else if (element === 'v' && this.#cell !== undefined) [this.#inside, this.#value] = ['value', ''];
    else if (element === 'f' && this.#cell !== undefined) [this.#inside, this.#formula] = ['formula', attributes];
    else if (element === 'row') this.#beginRow(attributes);
    else if (element === 'is' && this.#cell !== undefined) this.#inline = new RichText();
    else if (this.#inline !== undefined) this.#inline.open(element);
    else if (element === 'col') this.#putColumns(attributes);
    else if (element === 'mergeCell') this.#merge(attributes['ref']);
    else this.layout?.open(element, attributes);
  }

  text(text: string): void {
    if (this.#inside === 'value') this.#value = (this.#value ?? '') + text;
    else if (this.#inside === 'formula') this.#formulaText += text;
    else this.#inline?.add(text);
  }

  close(element: string): void {
    if (element === 'c') this.#endCell();
    else if (element === 'v' || element === 'f') this.#inside = undefined;
    else this.#inline?.close(element);
  }

  #putColumns(attributes: XmlAttributes): void {
    if (++this.#columns > mostColumns) return;
    putColumnWidths(this.widths, attributes, this.#digit);
    this.layout?.columns(attributes);
  }

  #merge(stated: string | undefined): void {
    const range = this.merged.length < bookLimits.listed ? rangeIn(stated) : undefined;
    if (range !== undefined) this.merged.push(range);
  }

  #beginRow(attributes: XmlAttributes): void {
    this.#at.beginRow(attributes['r']);
    this.layout?.row(this.#at.row, attributes);
  }

  #beginCell(attributes: XmlAttributes): void {
    this.#at.beginCell(attributes['r']);
    this.#cell = attributes;
    this.#formula = this.#value = this.#inside = this.#inline = undefined;
    this.#formulaText = '';
  }

  #endCell(): void {
    const attributes = this.#cell;
    if (attributes === undefined) return;
    const inline = this.#inline?.text;
    this.#cell = this.#inline = undefined;
    const { row, column } = this.#at;
    const type = attributes['t'];
    const style = Number(attributes['s'] ?? 0);
    let format = this.shared.formats[style];
    const look = this.#lookOf(style);
    const value = storedValue({ type, text: this.#value, inline }, this.shared.strings);
    const formula = this.#formulaOf(attributes['cm']);
    if (value === null && formula === undefined) {
      if (format !== undefined || look !== undefined) this.grid.putBlank(row, column, { format: format ?? '', look });
      return;
    }
    if (type === 'd' && typeof value === 'number' && !isDateFormat(format)) format = dateFormat;
    const counted = this.shared.date1904 && type !== 'd' ? from1900(value, format) : value;
    const cell = cellOf(counted, format, look);
    this.grid.put(row, column, formula === undefined ? cell : { ...cell, ...formula });
  }

  /** Undefined where the look is that of a cell without any style. */
  #lookOf(style: number): CellLook | undefined {
    const { looks } = this.shared;
    return looks === undefined || looks[style] === looks[0] ? undefined : looks[style];
  }

  #formulaOf(mark: string | undefined): ReturnType<CellFormulas['at']> {
    if (this.#formula === undefined) return undefined;
    const { row, column } = this.#at;
    const isDynamic = mark !== undefined && this.shared.dynamic.has(mark);
    return this.#formulas.at({ attributes: this.#formula, text: this.#formulaText, row, column, isDynamic });
  }
}

function cellOf(value: CellValue, format: string | undefined, look: CellLook | undefined): BookCell {
  if (look !== undefined) return format === undefined ? { value, look } : { value, format, look };
  return format === undefined ? { value } : { value, format };
}
