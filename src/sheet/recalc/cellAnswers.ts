import { answerFormat } from '../../app/calls/answerFormat.js';
import { namespace } from '../../app/calls/functionCatalogue.js';
import { formulaAsTyped } from '../formula/formulaAsTyped.js';
import type { CellAnswer } from './cellAnswer.js';
import { cellKey } from '../address/cellKey.js';
import { eachCell, isInside } from '../address/cellRange.js';
import type { RunFormula } from '../run/runFormula.js';

/** The answers of formulas, cell by cell: their own, those they fill, and those they filled before and nobody fills now. */
export function cellAnswers(formulas: readonly RunFormula[]): CellAnswer[] {
  const answers = formulas.flatMap(filledCells);
  const covered = new Set(answers.map(placeKey));
  return [...answers, ...formulas.flatMap(leftCells).filter((cell) => !covered.has(placeKey(cell)))];
}

function filledCells(formula: RunFormula): CellAnswer[] {
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
      formula: isOwn ? formulaAsTyped(formula.stored) : '',
      ...(isOwn && outcome.reason !== undefined && { reason: outcome.reason }),
      ...(outcome.isKept === true && { isKept: true }),
      ...(typeof value === 'number' && isTime(formula, c - column) && { isTime: true }),
      ...(isOwn ? kind !== 'cell' && { fills: area } : { anchor: { row, column } }),
    });
  });
  return answers;
}

function leftCells({ sheet, row, column, outcome, filled, area }: RunFormula): CellAnswer[] {
  const answers: CellAnswer[] = [];
  if (outcome?.isKept === true) return answers;
  eachCell(filled, (r, c) => {
    if (isInside(area, r, c)) return;
    answers.push({ sheet, row: r, column: c, value: null, formula: '', anchor: { row, column } });
  });
  return answers;
}

function isTime({ outcome }: RunFormula, column: number): boolean {
  if (outcome?.calls === undefined) return outcome?.moments?.(column) === true;
  const { calls, grid } = outcome;
  const heading = grid.length > 1 ? grid[0]?.[column] : undefined;
  return answerFormat(calls.slice(namespace.length + 1), heading) !== '';
}

function placeKey({ sheet, row, column }: CellAnswer): string {
  return `${cellKey(row, column)} ${sheet}`;
}
