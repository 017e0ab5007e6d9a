import type { Given } from '../../src/sheet/cell/cellValue.js';
import type { FormulaNode } from '../../src/sheet/formula/formulaNode.js';
import { parsedFormula } from '../../src/sheet/formula/parsedFormula.js';

/** The function and the arguments of a call with its arguments written out, such as an example's. */
export function callIn(formula: string): { readonly name: string; readonly given: readonly Given[] } {
  const node = parsedFormula(formula.replace(/^=/, ''));
  if (node.kind !== 'call') throw new Error(`${formula} is not a call`);
  return { name: node.name.replace(/^QT\./, ''), given: node.given.map((one) => one && literal(one)) };
}

function literal(node: FormulaNode): Given {
  if (node.kind === 'value') return node.value;
  if (node.kind === 'array') return node.rows;
  const value = node.kind === 'unary' ? literal(node.of) : undefined;
  if (node.kind !== 'unary' || typeof value !== 'number') throw new Error(`${node.kind} is not a value written out`);
  return node.operator === '-' ? -value : node.operator === '%' ? value / 100 : value;
}
