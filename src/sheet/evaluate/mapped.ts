import { errorCell, type CellValue } from '../cell/cellValue.js';
import { isGrid, type Grid } from './value.js';

/**
 * Combines cells in the same place: one cell goes with all, a row with all rows, a column with all columns. Where one grid
 * is shorter than another, the answer is `#N/A`.
 */
export function mapped(
  sources: readonly (CellValue | Grid)[],
  cell: (...cells: CellValue[]) => CellValue,
): CellValue | Grid {
  const grids = sources.filter(isGrid);
  if (grids.length === 0) return cell(...sources.map((source) => source as CellValue));
  const height = Math.max(...grids.map((grid) => grid.length));
  const width = Math.max(...grids.map((grid) => grid[0]?.length ?? 0));
  return Array.from({ length: height }, (_, row) =>
    Array.from({ length: width }, (__, column) => {
      const cells = sources.map((source) => (isGrid(source) ? cellIn(source, row, column) : source));
      return cells.includes(undefined) ? errorCell('#N/A') : cell(...(cells as CellValue[]));
    }),
  );
}

function cellIn(grid: Grid, row: number, column: number): CellValue | undefined {
  const cells = grid.length === 1 ? grid[0] : grid[row];
  return cells?.length === 1 ? cells[0] : cells?.[column];
}
