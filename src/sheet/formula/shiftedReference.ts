import { readReference } from './readReference.js';
import { sheetLimits } from '../address/sheetLimits.js';
import { writeReference } from './writeReference.js';

/**
 * A reference of a defined name, seen from a cell: names count their relative references from A1, past the last row or
 * column they go on at the first.
 */
export function shiftedReference(
  text: string,
  { row, column }: { readonly row: number; readonly column: number },
): string {
  const reference = readReference(text);
  if (reference === undefined) return text;
  const { range, fixed, whole } = reference;
  const down = (at: number, isFixed: boolean): number => (isFixed ? at : (at + row) % sheetLimits.rows);
  const right = (at: number, isFixed: boolean): number => (isFixed ? at : (at + column) % sheetLimits.columns);
  return writeReference({
    ...reference,
    range: {
      firstRow: whole === 'columns' ? range.firstRow : down(range.firstRow, fixed.firstRow),
      lastRow: whole === 'columns' ? range.lastRow : down(range.lastRow, fixed.lastRow),
      firstColumn: whole === 'rows' ? range.firstColumn : right(range.firstColumn, fixed.firstColumn),
      lastColumn: whole === 'rows' ? range.lastColumn : right(range.lastColumn, fixed.lastColumn),
    },
  });
}
