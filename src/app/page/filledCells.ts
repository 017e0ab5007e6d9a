import type { BookSheet, CellRange } from '../../sheet/index.js';

/** The cells of a sheet that an array formula in another cell fills: no content of their own. */
export function filledCells(sheet: BookSheet): (row: number, column: number) => boolean {
  const byRow = new Map<number, { range: CellRange; row: number; column: number }[]>();
  sheet.rows.forEach((cells, row) => {
    cells?.forEach((cell, column) => {
      const range = cell?.fills;
      if (range === undefined) return;
      for (let at = range.firstRow; at <= range.lastRow; at++) {
        const list = byRow.get(at) ?? [];
        list.push({ range, row, column });
        byRow.set(at, list);
      }
    });
  });
  return (row, column) =>
    byRow.get(row)?.some(({ range, row: anchorRow, column: anchorColumn }) => {
      const isAnchor = anchorRow === row && anchorColumn === column;
      return !isAnchor && range.firstColumn <= column && column <= range.lastColumn;
    }) === true;
}

/** The last row of a sheet that holds a value or a formula, counted from 0; -1: none. Formats alone may reach far below it. */
export function lastRow({ rows }: BookSheet): number {
  let last = -1;
  rows.forEach((cells, row) => {
    if (cells?.some((cell) => cell !== undefined && (cell.value !== null || cell.formula !== undefined))) last = row;
  });
  return last;
}
