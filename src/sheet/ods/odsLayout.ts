import { bookLimits } from '../book/bookLimits.js';
import type { LineStyle, SheetLayout } from '../book/sheetLayout.js';
import type { XmlAttributes } from '../xml/walkXml.js';
import type { OdsStyles } from './odsStyles.js';

/** Rows repeated more often are the rest of the sheet. */
const farthest = 1000;

/** Gathers how a sheet of an .ods file is laid out: heights, hidden rows and columns, looks of whole columns. */
export class OdsLayout {
  readonly #heights: (number | undefined)[] = [];
  readonly #fixedRows = new Set<number>();
  readonly #hiddenRows = new Set<number>();
  readonly #hiddenColumns = new Set<number>();
  readonly #columnStyles = new Map<number, LineStyle>();

  constructor(private readonly styles: OdsStyles) {}

  rows(first: number, count: number, attributes: XmlAttributes): void {
    if (count > farthest) return;
    const row = this.styles.row(attributes['table:style-name']);
    const last = Math.min(first + count, bookLimits.rows);
    for (let at = first; at < last; at++) {
      if (row?.height !== undefined) this.#heights[at] = row.height;
      if (row?.height !== undefined && row.isFixed) this.#fixedRows.add(at);
      if (isHidden(attributes)) this.#hiddenRows.add(at);
    }
  }

  columns(first: number, last: number, attributes: XmlAttributes): void {
    const style = attributes['table:default-cell-style-name'];
    const [look, format] = [this.styles.looks?.look(style), this.styles.format(style)];
    const line = { ...(look === undefined ? {} : { look }), ...(format === undefined ? {} : { format }) };
    for (let at = first; at < last; at++) {
      if (isHidden(attributes)) this.#hiddenColumns.add(at);
      if (look !== undefined || format !== undefined) this.#columnStyles.set(at, line);
    }
  }

  layout(): SheetLayout {
    return {
      heights: this.#heights,
      fixedRows: this.#fixedRows,
      hiddenRows: this.#hiddenRows,
      hiddenColumns: this.#hiddenColumns,
      rowStyles: new Map(),
      columnStyles: this.#columnStyles,
      gridlines: true,
    };
  }
}

function isHidden(attributes: XmlAttributes): boolean {
  return ['collapse', 'filter'].includes(attributes['table:visibility'] ?? '');
}
