import type { CellRange } from '../address/cellRange.js';
import { bookLimits } from '../book/bookLimits.js';
import type { XmlAttributes } from '../xml/walkXml.js';

/** The cells that a merged cell or an array formula covers; undefined for a plain cell. */
export function spanAt(
  place: { readonly row: number; readonly column: number },
  attributes: XmlAttributes,
  kind: 'merged' | 'matrix',
): CellRange | undefined {
  const word = kind === 'merged' ? 'table:number' : 'table:number-matrix';
  const rows = attributes[`${word}-rows-spanned`];
  const columns = attributes[`${word}-columns-spanned`];
  if (rows === undefined && columns === undefined) return undefined;
  if (kind === 'merged' && count(rows) * count(columns) === 1) return undefined;
  return {
    firstRow: place.row,
    firstColumn: place.column,
    lastRow: Math.min(place.row + count(rows), bookLimits.rows) - 1,
    lastColumn: Math.min(place.column + count(columns), bookLimits.columns) - 1,
  };
}

/** How many equal rows or cells one element stands for. */
export function timesRepeated(attributes: XmlAttributes, what: 'rows' | 'columns'): number {
  return Math.min(count(attributes[`table:number-${what}-repeated`]), 2 * bookLimits.rows);
}

function count(stated: string | undefined): number {
  const number = Math.trunc(Number(stated ?? 1));
  return number >= 1 ? number : 1;
}
