import type { GridCell, GridSheet } from '../../../src/app/page/gridSheets.js';
import { gridFormulas } from '../../../src/app/page/gridFormulas.js';
import { cellKey, sheetId } from '../../../src/app/page/gridKeys.js';
import { isInside } from '../../../src/sheet/address/cellRange.js';
import type { Book, BookCell, BookSheet } from '../../../src/sheet/book/book.js';

/** A book as the grid holds it: plain formulas, nothing in blank cells, spilled ranges only of formulas that fill several. */
export function gridOf(book: Book): GridSheet[] {
  const formulas = gridFormulas(book);
  return book.sheets.map((sheet, index) => {
    const anchors = sheet.rows.flatMap((row) => row?.flatMap((cell) => (isFilling(cell) ? [cell.fills] : [])) ?? []);
    const gridCell = (cell: BookCell | undefined, row: number, column: number): GridCell | undefined => {
      if (cell === undefined || (cell.value === null && cell.formula === undefined)) return undefined;
      const formula = formulas.get(cellKey(sheetId(index), row, column))?.plain ?? undefined;
      const isSpilled = formula === undefined && anchors.some((range) => isInside(range, row, column));
      return {
        value: cell.value === '' ? null : cell.value,
        ...(formula === undefined ? {} : { formula }),
        ...(isFilling(cell) ? { spills: cell.fills } : {}),
        ...(isSpilled ? { isSpilled } : {}),
      };
    };
    return gridSheet(sheet, index, (row) => sheet.rows[row]?.map((cell, column) => gridCell(cell, row, column)));
  });
}

function gridSheet(
  { name, hidden, rows, merged }: BookSheet,
  index: number,
  rowOf: (row: number) => GridSheet['rows'][number],
): GridSheet {
  const cells = Array.from({ length: rows.length }, (_, row) => rowOf(row));
  return { id: sheetId(index), name, hidden, rows: cells, widths: [], merged };
}

function isFilling(cell: BookCell | undefined): cell is BookCell & Required<Pick<BookCell, 'fills'>> {
  const fills = cell?.fills;
  return fills !== undefined && (fills.lastRow > fills.firstRow || fills.lastColumn > fills.firstColumn);
}
