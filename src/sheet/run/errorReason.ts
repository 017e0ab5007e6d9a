import { addressOf } from '../address/addressOf.js';
import { isCellError } from '../cell/cellValue.js';
import type { BookCells } from './bookCells.js';
import type { RunFormula } from './runFormula.js';

const mostLookedAt = 100_000;

/** Why the answer of a formula is an error: what a function of ours said, or the first such error among the cells it reads. */
export function errorReason(formula: RunFormula, cells: BookCells): string | undefined {
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
