import { isCellError, errorCell, type CellError, type CellValue } from '../cell/cellValue.js';
import type { FormulaNode } from '../formula/formulaNode.js';
import { cellNumber } from './cellReading.js';
import { Area, isGrid, Lambda, type Form, type Grid, type Scope, type Value } from './value.js';

type Given = readonly (FormulaNode | undefined)[];

/** The aggregates that people use most, straight from the cells: the library makes an object for every cell it adds. */
export const aggregateForms: ReadonlyMap<string, Form> = new Map<string, Form>([
  ['SUM', (given, scope) => ofNumbers(given, scope, (numbers) => numbers.reduce((sum, number) => sum + number, 0))],
  [
    'MIN',
    (given, scope) => ofNumbers(given, scope, (numbers) => numbers.reduce((a, b) => Math.min(a, b), numbers[0] ?? 0)),
  ],
  [
    'MAX',
    (given, scope) => ofNumbers(given, scope, (numbers) => numbers.reduce((a, b) => Math.max(a, b), numbers[0] ?? 0)),
  ],
  [
    'AVERAGE',
    (given, scope) =>
      ofNumbers(given, scope, (numbers) =>
        numbers.length === 0 ? errorCell('#DIV/0!') : numbers.reduce((sum, number) => sum + number, 0) / numbers.length,
      ),
  ],
  [
    'COUNT',
    (given, scope) => counted(given, scope, (cell, isTyped) => typeof (isTyped ? cellNumber(cell) : cell) === 'number'),
  ],
  ['COUNTA', (given, scope) => counted(given, scope, (cell, isTyped) => isTyped || cell !== null)],
]);

/** In cells and arrays only numbers count; a value typed into the formula must be one. */
function ofNumbers(given: Given, scope: Scope, result: (numbers: readonly number[]) => number | CellError): Value {
  const numbers: number[] = [];
  for (const node of given) {
    const read = readGiven(node, scope);
    for (const cell of isGrid(read) ? read.flat() : [cellNumber(read)]) {
      if (isCellError(cell)) return cell;
      if (typeof cell === 'number') numbers.push(cell);
    }
  }
  const answer = result(numbers);
  return typeof answer === 'number' && !Number.isFinite(answer) ? errorCell('#NUM!') : answer;
}

function counted(given: Given, scope: Scope, isCounted: (cell: CellValue, isTyped: boolean) => boolean): number {
  let count = 0;
  for (const node of given) {
    const read = readGiven(node, scope);
    if (isGrid(read)) {
      for (const row of read) for (const cell of row) if (isCounted(cell, false)) count += 1;
    } else if (isCounted(read, true)) count += 1;
  }
  return count;
}

/** Cells as a grid, even one cell alone; a value typed into the formula as it is. */
function readGiven(node: FormulaNode | undefined, scope: Scope): CellValue | Grid {
  const value = node === undefined ? null : scope.evaluate(node, scope);
  if (value instanceof Lambda) return errorCell('#VALUE!');
  return value instanceof Area ? scope.world.rows(value) : value;
}
