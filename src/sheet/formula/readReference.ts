import { columnNumber } from '../address/cellKey.js';
import type { PlainReference } from './plainReference.js';
import { sheetLimits } from '../address/sheetLimits.js';

/** The text of a `reference` token in numbers; undefined for `#REF!`, a reference whose cells were deleted. */
export function readReference(text: string): PlainReference | undefined {
  const bang = text.lastIndexOf('!', text.length - 2);
  const sheet = bang < 0 ? undefined : unquoted(text.slice(0, bang));
  const [first = '', last = first] = text.slice(bang + 1).split(':');
  const [from, to] = [endOf(first), endOf(last)];
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

interface End {
  readonly row?: number;
  readonly column?: number;
  readonly fixedRow: boolean;
  readonly fixedColumn: boolean;
}

function endOf(text: string): End | undefined {
  const [, beforeColumn = '', letters, beforeRow = '', digits] = /^(\$?)([A-Z]+)?(\$?)(\d+)?$/i.exec(text) ?? [];
  if (letters === undefined && digits === undefined) return undefined;
  return {
    ...(letters === undefined ? {} : { column: columnNumber(letters) }),
    ...(digits === undefined ? {} : { row: Number(digits) - 1 }),
    fixedColumn: letters === undefined || beforeColumn === '$',
    // In `$5:$9` the first $ stands before the row.
    fixedRow: digits === undefined || beforeRow === '$' || (letters === undefined && beforeColumn === '$'),
  };
}

function unquoted(sheet: string): string {
  return sheet.startsWith("'") ? sheet.slice(1, -1).replaceAll("''", "'") : sheet;
}

function inOrder(a: number, b: number): [number, number] {
  return a <= b ? [a, b] : [b, a];
}
