import { cellKey } from '../address/cellKey.js';
import { eachCell, isInside, type CellPlace, type CellRange } from '../address/cellRange.js';
import type { CellValue } from '../cell/cellValue.js';
import type { TypedFormula } from '../cell/formulaText.js';
import { formulaAsTyped } from '../formula/formulaAsTyped.js';
import { givesMoments, type OutsideFunctions } from '../formula/outsideFunctions.js';
import type { FormulaState } from '../run/formulaState.js';

/** What a cell of a book holds after its formula was worked out. */
export interface CellAnswer extends CellPlace {
  /** '' for a cell filled, or filled no longer, by the array formula of another. */
  readonly formula: TypedFormula;
  /** null: the cell is now empty. Days count from 1900. */
  readonly value: CellValue;
  /** Why it is an error, or why the stored value stays. */
  readonly reason?: string;
  /** The stored value stays: the formula cannot be worked out here. */
  readonly isKept?: boolean;
  /** A moment, as the formula says. */
  readonly isTime?: boolean;
  /** The cell whose array formula fills this one. */
  readonly anchor?: { readonly row: number; readonly column: number };
  /** The cells that the array formula of this cell fills now. */
  readonly fills?: CellRange;
}

/** The answers of formulas, cell by cell: their own, those they fill, and those they filled before and no formula fills now. */
export function cellAnswers(formulas: readonly FormulaState[], outside: OutsideFunctions): CellAnswer[] {
  const answers = formulas.flatMap((formula) => filledCells(formula, outside));
  const covered = new Set(answers.map(placeKey));
  return [...answers, ...formulas.flatMap(leftCells).filter((cell) => !covered.has(placeKey(cell)))];
}

function filledCells(formula: FormulaState, outside: OutsideFunctions): CellAnswer[] {
  const { sheet, row, column, outcome, filled, kind } = formula;
  if (outcome === undefined) throw new Error(`${formula.stored} was not worked out`);
  const area = outcome.isKept === true ? filled : formula.area;
  const answers: CellAnswer[] = [];
  eachCell(area, (r, c) => {
    const value = outcome.grid[r - row]?.[c - column] ?? null;
    const isOwn = r === row && c === column;
    answers.push({
      sheet,
      row: r,
      column: c,
      value,
      formula: isOwn ? formulaAsTyped(formula.stored, outside) : '',
      ...(isOwn && outcome.reason !== undefined && { reason: outcome.reason }),
      ...(outcome.isKept === true && { isKept: true }),
      ...(typeof value === 'number' && isTime(formula, c - column, outside) && { isTime: true }),
      ...(isOwn ? kind !== 'cell' && { fills: area } : { anchor: { row, column } }),
    });
  });
  return answers;
}

function leftCells({ sheet, row, column, outcome, filled, area }: FormulaState): CellAnswer[] {
  const answers: CellAnswer[] = [];
  if (outcome?.isKept === true) return answers;
  eachCell(filled, (r, c) => {
    if (isInside(area, r, c)) return;
    answers.push({ sheet, row: r, column: c, value: null, formula: '', anchor: { row, column } });
  });
  return answers;
}

function isTime({ outcome }: FormulaState, column: number, outside: OutsideFunctions): boolean {
  if (outcome?.calls === undefined) return outcome?.moments?.(column) === true;
  const { calls, grid } = outcome;
  const heading = grid.length > 1 ? grid[0]?.[column] : undefined;
  return givesMoments(outside.columns(calls), heading);
}

function placeKey({ sheet, row, column }: CellAnswer): string {
  return `${cellKey(row, column)} ${sheet}`;
}
