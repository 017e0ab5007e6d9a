import { columnLetters } from '../address/addressOf.js';
import { columnNumber } from '../address/cellKey.js';
import type { CellRange } from '../address/cellRange.js';
import { sheetLimits } from '../address/sheetLimits.js';

/** A reference as written, such as `'My log'!$A$2:B9`, in numbers. */
interface PlainReference {
  /** Without quotes; undefined: the sheet of the formula. */
  readonly sheet?: string;
  readonly range: CellRange;
  /** Which of its ends stay where they are when the formula is copied elsewhere. */
  readonly fixed: Readonly<Record<keyof CellRange, boolean>>;
  /** Written as whole columns, such as `A:C`, or whole rows, such as `1:3`. */
  readonly whole?: 'columns' | 'rows';
}

/** The text of a `reference` token in numbers; undefined for `#REF!`, a reference whose cells were deleted. */
export function readReference(text: string): PlainReference | undefined {
  const bang = text.lastIndexOf('!', text.length - 2);
  const sheet = bang < 0 ? undefined : unquoted(text.slice(0, bang));
  const [first = '', last = first] = text.slice(bang + 1).split(':');
  const [from, to] = [readCorner(first), readCorner(last)];
  if (from === undefined || to === undefined) return undefined;
  const rows = inOrder(from.row ?? 0, to.row ?? sheetLimits.rows - 1);
  const columns = inOrder(from.column ?? 0, to.column ?? sheetLimits.columns - 1);
  return {
    ...(sheet === undefined ? {} : { sheet }),
    range: { firstRow: rows[0], firstColumn: columns[0], lastRow: rows[1], lastColumn: columns[1] },
    fixed: {
      firstRow: from.fixedRow,
      firstColumn: from.fixedColumn,
      lastRow: to.fixedRow,
      lastColumn: to.fixedColumn,
    },
    ...(from.row === undefined ? { whole: 'columns' as const } : {}),
    ...(from.column === undefined ? { whole: 'rows' as const } : {}),
  };
}

/** A reference as it is written in a formula. */
export function writeReference({ sheet, range, fixed, whole }: PlainReference): string {
  const prefix = sheet === undefined ? '' : `${quotedSheet(sheet)}!`;
  const [first, last] = (['first', 'last'] as const).map((end) =>
    writeCorner({
      row: whole === 'columns' ? undefined : range[`${end}Row`],
      column: whole === 'rows' ? undefined : range[`${end}Column`],
      fixedRow: fixed[`${end}Row`],
      fixedColumn: fixed[`${end}Column`],
    }),
  );
  return `${prefix}${first === last && whole === undefined ? first : `${first}:${last}`}`;
}

/**
 * A reference of a defined name, seen from a cell: the relative references of a name count from A1, and wrap around
 * past the last row or column.
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

/** One end of a reference, such as `$B2`; of whole columns and rows `B` or `2` alone. */
export interface Corner {
  readonly row: number | undefined;
  readonly column: number | undefined;
  readonly fixedRow: boolean;
  readonly fixedColumn: boolean;
}

export function readCorner(text: string): Corner | undefined {
  const [, beforeColumn = '', letters, beforeRow = '', digits] = /^(\$?)([A-Z]{1,3})?(\$?)(\d+)?$/i.exec(text) ?? [];
  if (letters === undefined && digits === undefined) return undefined;
  return {
    row: digits === undefined ? undefined : Number(digits) - 1,
    column: letters === undefined ? undefined : columnNumber(letters),
    // In `$5:$9` the first $ stands before the row.
    fixedRow: digits === undefined || beforeRow === '$' || (letters === undefined && beforeColumn === '$'),
    fixedColumn: letters === undefined || beforeColumn === '$',
  };
}

export function writeCorner({ row, column, fixedRow, fixedColumn }: Corner): string {
  const letters = column === undefined ? '' : `${fixedColumn ? '$' : ''}${columnLetters(column)}`;
  const digits = row === undefined ? '' : `${fixedRow ? '$' : ''}${row + 1}`;
  return letters + digits;
}

function unquoted(sheet: string): string {
  return sheet.startsWith("'") ? sheet.slice(1, -1).replaceAll("''", "'") : sheet;
}

function inOrder(a: number, b: number): [number, number] {
  return a <= b ? [a, b] : [b, a];
}

/** In quotes where the name could be read as something else. */
function quotedSheet(sheet: string): string {
  const isPlain = /^[\p{L}_][\p{L}\p{N}_]*$/u.test(sheet) && !/^(?:[A-Z]{1,3}\d+|R\d*C?\d*|C\d*)$/i.test(sheet);
  return isPlain ? sheet : `'${sheet.replaceAll("'", "''")}'`;
}
