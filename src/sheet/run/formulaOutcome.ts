import { addressOf } from '../address/addressOf.js';
import { errorCell, isCellError, type CellValue } from '../cell/cellValue.js';
import { CircularReference, type Grid } from '../evaluate/value.js';
import { UnreadableFormula } from '../formula/formulaNode.js';
import type { BookCells } from './bookCells.js';
import type { Outcome, FormulaState } from './formulaState.js';

/** Larger areas are not searched for the cause of an error. */
const mostLookedAt = 100_000;

/** What becomes of a formula that could not be worked out. A fault of our own is thrown on. */
export function failedOutcome(formula: FormulaState, fault: unknown, cells: BookCells): Outcome {
  if (fault instanceof CircularReference) {
    const reason = 'the formula reads its own cell, or cells that depend on it; break the loop';
    return { grid: shapedAnswer(errorCell('#REF!'), formula), reason };
  }
  const grid = cells.sheet(formula.sheet).grid(formula.filled);
  if (fault instanceof UnreadableFormula) return { grid, isKept: true, reason: `the formula ${fault.message}` };
  if (fault instanceof RangeError) {
    return { grid, isKept: true, reason: 'the formula depends on a chain of formulas that is too long to follow' };
  }
  throw fault;
}

/**
 * An answer in the shape of the formula's cells: one cell takes the first; a fixed array formula repeats one cell, row or
 * column over its cells, leaves out what does not fit and shows `#N/A` where there is nothing. A blank shows as 0.
 */
export function shapedAnswer(answer: CellValue | Grid, { kind, filled }: FormulaState): CellValue[][] {
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

/** Why the answer of a formula is an error: what a function from outside said, or the first such error among the cells it reads. */
export function errorReason(formula: FormulaState, cells: BookCells): string | undefined {
  const answer = formula.outcome?.grid[0]?.[0];
  if (!isCellError(answer)) return undefined;
  const code = answer.basicValue;
  const refusal = formula.refusals.find((one) => one.code === code);
  if (refusal !== undefined) return refusal.message;
  for (const area of formula.reads) {
    const { sheet, range, rowCount, columnCount } = cells.inUse(area);
    if (rowCount * columnCount > mostLookedAt) continue;
    for (let row = range.firstRow; row <= range.lastRow; row += 1) {
      for (let column = range.firstColumn; column <= range.lastColumn; column += 1) {
        const value = cells.sheet(sheet).value(row, column);
        if (isCellError(value) && value.basicValue === code) {
          const where = sheet === formula.sheet ? addressOf(row, column) : `${sheet}!${addressOf(row, column)}`;
          return `${where}, which the formula reads, is ${code}`;
        }
      }
    }
  }
  return undefined;
}
