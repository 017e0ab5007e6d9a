import { isCellError, errorCell, type CellError, type CellValue } from '../cell/cellValue.js';
import type { FormulaNode } from '../formula/formulaNode.js';
import { binaryResult } from './binaryResult.js';
import { cellNumber, cellTruth } from './cellReading.js';
import { content, operand } from './content.js';
import { mapped } from './mapped.js';
import { isGrid, type Grid, type Value, type Form, type Scope } from './value.js';

type Given = readonly (FormulaNode | undefined)[];

/** Functions that evaluate only the arguments they need: not the side of an IF that is not taken. */
export const conditionalForms: ReadonlyMap<string, Form> = new Map<string, Form>([
  [
    'IF',
    ([test, yes, ...rest], scope) =>
      chosen(operand(test, scope), scope, {
        yes: () => worked(yes, scope),
        no: () => (rest.length === 0 ? false : worked(rest[0], scope)),
      }),
  ],
  ['IFS', (given, scope) => ifs(given, scope)],
  ['SWITCH', ([of, ...cases], scope) => switched(operand(of, scope), cases, scope)],
  ['IFERROR', (given, scope) => instead(given, scope, isCellError)],
  ['IFNA', (given, scope) => instead(given, scope, (cell) => isCellError(cell) && cell.basicValue === '#N/A')],
  ['CHOOSE', ([index, ...choices], scope) => choose(operand(index, scope), choices, scope)],
]);

function worked(node: FormulaNode | undefined, scope: Scope): Value {
  return node === undefined ? 0 : scope.evaluate(node, scope);
}

interface Sides {
  readonly yes: () => Value;
  readonly no: () => Value;
}

function chosen(test: CellValue | Grid, scope: Scope, { yes, no }: Sides): Value {
  if (!isGrid(test)) {
    const truth = cellTruth(test);
    return isCellError(truth) ? truth : truth ? yes() : no();
  }
  return mapped([test, content(yes(), scope), content(no(), scope)], (cell, ifYes = null, ifNo = null) => {
    const truth = cellTruth(cell ?? null);
    return isCellError(truth) ? truth : truth ? ifYes : ifNo;
  });
}

function ifs([test, value, ...rest]: Given, scope: Scope): Value {
  if (test === undefined) return errorCell('#N/A');
  return chosen(operand(test, scope), scope, { yes: () => worked(value, scope), no: () => ifs(rest, scope) });
}

function switched(of: CellValue | Grid, [match, value, ...rest]: Given, scope: Scope): Value {
  if (match === undefined) return errorCell('#N/A');
  // A single argument left at the end is the default.
  if (value === undefined && rest.length === 0) return worked(match, scope);
  const test = mapped([of, operand(match, scope)], (a = null, b = null) => binaryResult('=', a, b));
  return chosen(test, scope, { yes: () => worked(value, scope), no: () => switched(of, rest, scope) });
}

function instead([node, other]: Given, scope: Scope, isReplaced: (cell: CellValue) => boolean): Value {
  const value = worked(node, scope);
  const read = content(value, scope);
  if (!isGrid(read)) return isReplaced(read) ? worked(other, scope) : value;
  if (!read.some((row) => row.some(isReplaced))) return value;
  return mapped([read, content(worked(other, scope), scope)], (cell = null, replacement = null) =>
    isReplaced(cell) ? replacement : cell,
  );
}

function choose(index: CellValue | Grid, choices: Given, scope: Scope): Value {
  if (!isGrid(index)) {
    const place = placeOf(index, choices.length);
    return isCellError(place) ? place : worked(choices[place], scope);
  }
  const read = choices.map((choice) => content(worked(choice, scope), scope));
  return mapped([index, ...read], (cell = null, ...cells) => {
    const place = placeOf(cell, cells.length);
    return isCellError(place) ? place : (cells[place] ?? null);
  });
}

function placeOf(cell: CellValue, count: number): number | CellError {
  const number = cellNumber(cell);
  if (isCellError(number)) return number;
  const place = Math.trunc(number) - 1;
  return place >= 0 && place < count ? place : errorCell('#VALUE!');
}
