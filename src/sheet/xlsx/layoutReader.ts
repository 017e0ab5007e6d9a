import { bookLimits } from '../book/bookLimits.js';
import type { CellLook } from '../book/cellLook.js';
import type { LineStyle, SheetLayout } from '../book/sheetLayout.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import { type Colours, colourOf } from './colourOf.js';

/** What the cell styles of a workbook look like, by their numbers. */
interface Styles {
  readonly looks: readonly CellLook[];
  readonly formats: readonly (string | undefined)[];
  readonly colours: Colours;
}

/** Points are 72 an inch, pixels 96. */
const pixelsOf = (points: number): number => Math.round((points * 96) / 72);
const tallest = 409.5;
const mostFrozen = 1000;

/** Gathers how a sheet is laid out from the elements of its part. */
export class LayoutReader {
  readonly #heights: (number | undefined)[] = [];
  readonly #fixedRows = new Set<number>();
  readonly #hiddenRows = new Set<number>();
  readonly #hiddenColumns = new Set<number>();
  readonly #rowStyles = new Map<number, LineStyle>();
  readonly #columnStyles = new Map<number, LineStyle>();
  #defaultHeight: number | undefined;
  #frozen: SheetLayout['frozen'];
  #gridlines = true;
  #tab: string | undefined;

  constructor(private readonly styles: Styles) {}

  open(element: string, attributes: XmlAttributes): void {
    if (element === 'sheetView') this.#gridlines = !['0', 'false'].includes(attributes['showGridLines'] ?? '1');
    else if (element === 'pane') this.#pane(attributes);
    else if (element === 'tabColor') this.#tab = colourOf(attributes, this.styles.colours);
    else if (element === 'sheetFormatPr') this.#defaultHeight = height(attributes['defaultRowHeight']);
  }

  row(row: number, attributes: XmlAttributes): void {
    if (row >= bookLimits.rows) return;
    const tall = height(attributes['ht']);
    if (tall !== undefined) this.#heights[row] = tall;
    if (tall !== undefined && isTrue(attributes['customHeight'])) this.#fixedRows.add(row);
    if (isTrue(attributes['hidden'])) this.#hiddenRows.add(row);
    if (isTrue(attributes['customFormat'])) this.#put(this.#rowStyles, [row, row], attributes['s']);
  }

  columns(attributes: XmlAttributes): void {
    const first = Number(attributes['min'] ?? NaN) - 1;
    const last = Math.min(Number(attributes['max'] ?? NaN), bookLimits.columns) - 1;
    if (!(first >= 0 && first <= last)) return;
    if (isTrue(attributes['hidden'])) for (let at = first; at <= last; at++) this.#hiddenColumns.add(at);
    this.#put(this.#columnStyles, [first, last], attributes['style']);
  }

  layout(): SheetLayout {
    return {
      heights: this.#heights,
      fixedRows: this.#fixedRows,
      hiddenRows: this.#hiddenRows,
      hiddenColumns: this.#hiddenColumns,
      rowStyles: this.#rowStyles,
      columnStyles: this.#columnStyles,
      gridlines: this.#gridlines,
      ...(this.#defaultHeight === undefined ? {} : { defaultHeight: this.#defaultHeight }),
      ...(this.#frozen === undefined ? {} : { frozen: this.#frozen }),
      ...(this.#tab === undefined ? {} : { tab: this.#tab }),
    };
  }

  /** Panes that are split but not frozen all scroll: nothing stays in view. */
  #pane(attributes: XmlAttributes): void {
    if (!(attributes['state'] ?? '').startsWith('frozen')) return;
    const [rows, columns] = [Number(attributes['ySplit'] ?? 0), Number(attributes['xSplit'] ?? 0)];
    const isCount = (count: number): boolean => Number.isInteger(count) && count >= 0 && count <= mostFrozen;
    if (isCount(rows) && isCount(columns)) this.#frozen = { rows, columns };
  }

  #put(lines: Map<number, LineStyle>, [first, last]: readonly [number, number], style: string | undefined): void {
    const { looks, formats } = this.styles;
    const [look, format] = [looks[Number(style ?? 0)], formats[Number(style ?? 0)]];
    const isPlain = format === undefined && (look === undefined || look === looks[0]);
    if (isPlain) return;
    const line = { ...(look === undefined ? {} : { look }), ...(format === undefined ? {} : { format }) };
    for (let at = first; at <= last; at++) lines.set(at, line);
  }
}

function height(points: string | undefined): number | undefined {
  const number = Number(points ?? NaN);
  return number >= 0 && number <= tallest ? pixelsOf(number) : undefined;
}

function isTrue(value: string | undefined): boolean {
  return value === '1' || value === 'true';
}
