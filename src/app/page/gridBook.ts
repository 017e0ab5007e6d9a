import type { Book, BookCell } from '../../sheet/index.js';
import type { GridCell, GridSheet } from './gridSheets.js';

/** The grid as a book, for finding and auditing logs in it. Tables that formulas spill are no content. */
export function gridBook(sheets: readonly GridSheet[]): Book {
  return {
    kind: 'xlsx',
    sheets: sheets.map(({ name, hidden, rows, merged, widths }) => ({
      name,
      hidden,
      rows: rows.map((row) => row?.map(bookCell)),
      merged,
      widths,
    })),
    names: [],
    tables: [],
    date1904: false,
    remarks: [],
  };
}

function bookCell(cell: GridCell | undefined): BookCell | undefined {
  if (cell === undefined || cell.isSpilled === true) return undefined;
  const { value, formula, format, spills } = cell;
  return {
    value,
    ...(formula === undefined ? {} : { formula: formula.slice(1) }),
    ...(format === undefined ? {} : { format }),
    ...(spills === undefined ? {} : { fills: spills, dynamic: true }),
  };
}
