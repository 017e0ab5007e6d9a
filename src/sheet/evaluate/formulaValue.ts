import { isCellError, errorCell, type CellValue } from '../cell/cellValue.js';
import { UnreadableFormula, type FormulaNode } from '../formula/formulaNode.js';
import { aggregateForms } from './aggregateForms.js';
import { joinedAreas, sharedArea, spilled } from './areaOperators.js';
import { binaryResult } from './binaryResult.js';
import { cellNumber } from './cellReading.js';
import { conditionalForms } from './conditionalForms.js';
import { operand } from './content.js';
import { single } from './intersection.js';
import { lambdaForms, applied } from './lambdaForms.js';
import { mapped } from './mapped.js';
import { referenceForms } from './referenceForms.js';
import { Area, type Form, type Value, type Scope } from './value.js';

/** Functions that evaluate their own arguments; the other usual functions come from a library. */
export const formulaForms: ReadonlyMap<string, Form> = new Map([
  ...aggregateForms,
  ...conditionalForms,
  ...lambdaForms,
  ...referenceForms,
]);

/** What a formula, or a part of one, gives in a place. Throws `UnreadableFormula` where this program cannot compute it. */
export function formulaValue(node: FormulaNode, scope: Scope): Value {
  switch (node.kind) {
    case 'value':
      return node.value;
    case 'array':
      return node.rows;
    case 'reference': {
      const sheet = node.sheet === undefined ? scope.place.sheet : scope.world.sheetNamed(node.sheet);
      return sheet === undefined ? errorCell('#REF!') : new Area(sheet, node.range, node.isWhole);
    }
    case 'name':
      return namedValue(node.name, scope);
    case 'call':
      return callValue(node, scope);
    case 'apply':
      return applied(scope.evaluate(node.of, scope), givenValues(node.given, scope));
    case 'binary':
      return binaryValue(node, scope);
    case 'unary':
      return unaryValue(node, scope);
  }
}

/** A name with no meaning may be `#NAME?` in the sheet, or one that this program failed to read: it cannot know which. */
function namedValue(name: string, { names }: Scope): Value {
  const value = names.get(name);
  if (value === undefined)
    throw new UnreadableFormula(`uses the name ${name}, which is not known here; put a text in quotes`);
  return value;
}

function callValue({ name, given }: FormulaNode & { kind: 'call' }, scope: Scope): Value {
  const lambda = scope.names.get(name.toLowerCase());
  if (lambda !== undefined) return applied(lambda, givenValues(given, scope));
  const form = formulaForms.get(name);
  const keeps = conditionalForms.has(name) || name === 'LET';
  const inner = keeps || !scope.intersects ? scope : { ...scope, intersects: false };
  if (form !== undefined) return form(given, inner);
  const values = given.map((one) => (one === undefined ? undefined : scope.evaluate(one, inner)));
  return scope.world.call(name, values, scope.place);
}

function givenValues(given: readonly (FormulaNode | undefined)[], scope: Scope): Value[] {
  return given.map((one) => (one === undefined ? null : scope.evaluate(one, { ...scope, intersects: false })));
}

function binaryValue({ operator, left, right }: FormulaNode & { kind: 'binary' }, scope: Scope): Value {
  if (operator === ':') return joinedAreas(scope.evaluate(left, scope), scope.evaluate(right, scope));
  if (operator === ' ') return sharedArea(scope.evaluate(left, scope), scope.evaluate(right, scope));
  return mapped([operand(left, scope), operand(right, scope)], (a = null, b = null) => binaryResult(operator, a, b));
}

function unaryValue({ operator, of }: FormulaNode & { kind: 'unary' }, scope: Scope): Value {
  if (operator === '@') return single(scope.evaluate(of, scope), scope);
  if (operator === '#') return spilled(scope.evaluate(of, scope), scope);
  // A plus changes nothing, not even a text.
  if (operator === '+') return scope.evaluate(of, scope);
  return mapped([operand(of, scope)], (cell = null) => signed(cell, operator));
}

function signed(cell: CellValue, operator: '-' | '%'): CellValue {
  const number = cellNumber(cell);
  return isCellError(number) ? number : operator === '%' ? number / 100 : number === 0 ? 0 : -number;
}
