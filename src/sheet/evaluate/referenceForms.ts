import { isCellError, errorCell } from '../cell/cellValue.js';
import { UnreadableFormula, type FormulaNode } from '../formula/formulaNode.js';
import { spilled } from './areaOperators.js';
import { content, firstCell } from './content.js';
import { indexForm } from './indexForm.js';
import { intersection, single } from './intersection.js';
import { mapped } from './mapped.js';
import { offsetForm } from './offsetForm.js';
import { Area, isGrid, type Value, type Form, type Scope } from './value.js';

/** Functions of cells rather than their values, and of the clock. */
export const referenceForms: ReadonlyMap<string, Form> = new Map<string, Form>([
  ['INDEX', indexForm],
  ['OFFSET', offsetForm],
  ['INDIRECT', indirect],
  ['ANCHORARRAY', ([of], scope) => spilled(worked(of, scope), scope)],
  ['SINGLE', ([of], scope) => single(worked(of, scope), scope)],
  ['ROW', ([of], scope) => placeNumbers(of, scope, 'row')],
  ['COLUMN', ([of], scope) => placeNumbers(of, scope, 'column')],
  ['ROWS', ([of], scope) => size(worked(of, scope), 'row')],
  ['COLUMNS', ([of], scope) => size(worked(of, scope), 'column')],
  ['ISREF', ([of], scope) => worked(of, scope) instanceof Area],
  ['ISBLANK', ([of], scope) => mapped([content(worked(of, scope), scope)], (cell) => cell === null)],
  ['NOW', (_, { world }) => world.now],
  ['TODAY', (_, { world }) => Math.floor(world.now)],
]);

function worked(node: FormulaNode | undefined, scope: Scope): Value {
  return node === undefined ? null : scope.evaluate(node, scope);
}

function indirect([text, isA1]: readonly (FormulaNode | undefined)[], scope: Scope): Value {
  const written = firstCell(text, scope);
  if (isCellError(written)) return written;
  if (typeof written !== 'string') return errorCell('#REF!');
  if (isA1 !== undefined && firstCell(isA1, scope) === false) {
    throw new UnreadableFormula('reads an address in row and column numbers, which is not supported here');
  }
  try {
    const found = scope.evaluate(scope.world.textAsFormula(written, scope.place), scope);
    return found instanceof Area ? found : errorCell('#REF!');
  } catch (fault) {
    if (fault instanceof UnreadableFormula) return errorCell('#REF!');
    throw fault;
  }
}

function placeNumbers(node: FormulaNode | undefined, scope: Scope, way: 'row' | 'column'): Value {
  if (node === undefined) return scope.place[way] + 1;
  const of = scope.evaluate(node, scope);
  if (isCellError(of)) return of;
  if (!(of instanceof Area)) return errorCell('#VALUE!');
  const area = scope.intersects ? intersection(of, scope.place) : of;
  if (!(area instanceof Area)) return area;
  const { firstRow, firstColumn } = area.range;
  const height = area.isWhole ? scope.world.rows(area).length : area.rowCount;
  if (way === 'column') return [Array.from({ length: area.columnCount }, (_, i) => firstColumn + i + 1)];
  return Array.from({ length: height }, (_, i) => [firstRow + i + 1]);
}

function size(of: Value, way: 'row' | 'column'): Value {
  if (of instanceof Area) return way === 'row' ? of.rowCount : of.columnCount;
  if (isGrid(of)) return way === 'row' ? of.length : (of[0]?.length ?? 1);
  return isCellError(of) ? of : 1;
}
