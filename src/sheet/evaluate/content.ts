import { errorCell, type CellValue } from '../cell/cellValue.js';
import type { FormulaNode } from '../formula/formulaNode.js';
import { intersection } from './intersection.js';
import { Area, isGrid, Lambda, type Grid, type Value, type Scope } from './value.js';

/** The content of a value: one cell, or a grid of several. */
export function content(value: Value, { world }: Pick<Scope, 'world'>): CellValue | Grid {
  if (value instanceof Lambda) return errorCell('#CALC!');
  const read = value instanceof Area ? world.rows(value) : value;
  if (!isGrid(read)) return read;
  return read.length === 1 && read[0]?.length === 1 ? (read[0][0] ?? null) : read;
}

/** An argument where a formula without dynamic arrays wants one value; one left out is a blank. */
export function operand(node: FormulaNode | undefined, scope: Scope): CellValue | Grid {
  if (node === undefined) return null;
  const value = scope.evaluate(node, scope);
  return content(scope.intersects && value instanceof Area ? intersection(value, scope.place) : value, scope);
}

/** The first cell of an argument. */
export function firstCell(node: FormulaNode | undefined, scope: Scope): CellValue {
  const read = operand(node, scope);
  return isGrid(read) ? (read[0]?.[0] ?? null) : read;
}
