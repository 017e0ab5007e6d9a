import { errorCell, type Grid } from '../evaluate/value.js';
import type { CellValue } from '../cell/cellValue.js';
import type { RunFormula } from './runFormula.js';

/**
 * An answer in the shape of the formula's cells: one cell takes the first; an array formula of old repeats one cell, row or
 * column over its cells, leaves out what does not fit and shows `#N/A` where there is nothing. A blank shows as 0.
 */
export function shapedAnswer(answer: CellValue | Grid, { kind, filled }: RunFormula): CellValue[][] {
  const grid: Grid = Array.isArray(answer) ? (answer as Grid) : [[answer as CellValue]];
  if (kind === 'cell') return [[grid[0]?.[0] ?? 0]];
  if (kind === 'dynamic') return grid.map((row) => row.map((cell) => cell ?? 0));
  const cellAt = (row: number, column: number): CellValue => {
    const cells = grid.length === 1 ? grid[0] : grid[row];
    const cell = cells?.length === 1 ? cells[0] : cells?.[column];
    return cell === undefined ? errorCell('#N/A') : (cell ?? 0);
  };
  return Array.from({ length: filled.lastRow - filled.firstRow + 1 }, (_, row) =>
    Array.from({ length: filled.lastColumn - filled.firstColumn + 1 }, (__, column) => cellAt(row, column)),
  );
}
