import { movableFormula } from '../formula/movableFormula.js';
import type { CellWrite } from './cellWrite.js';
import type { CellAt, TextAt } from './sheetMap.js';

/**
 * Whether the cell computes after the write what it computed before.
 * @param masters The first cell of each shared formula, by its number.
 */
export function sameFormula(write: CellWrite, cell: CellAt, masters: ReadonlyMap<string, CellAt>): boolean {
  const before = cell.formula;
  if (write.formula === undefined) return true;
  if (write.formula === null || !before) return write.formula === null && !before;
  if (formulaOf(cell, before, masters) !== write.formula.replace(/^=/, '')) return false;
  // A write that does not say how the formula is stored leaves that as it is.
  if (write.dynamic === undefined && write.fills === undefined) return true;
  const isDynamic = write.dynamic === true;
  const isArray = isDynamic || write.fills !== undefined;
  return isArray === (before.attributes['t'] === 'array') && isDynamic === (cell.attributes['cm'] !== undefined);
}

/** A cell that shares the formula of another has no text of its own. */
function formulaOf(cell: CellAt, formula: TextAt, masters: ReadonlyMap<string, CellAt>): string {
  const master = masters.get(formula.attributes['si'] ?? '');
  if (formula.attributes['t'] !== 'shared' || formula.text !== '' || !master?.formula) return formula.text;
  return movableFormula(master.formula.text)(cell.row - master.row, cell.column - master.column);
}
