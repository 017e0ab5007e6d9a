import type { StoredFormula, TypedFormula } from '../cell/formulaText.js';
import type { BinaryOperator, FormulaNode } from './formulaNode.js';
import { formulaTokens } from './formulaTokens.js';
import { parsedOperand } from './parsedOperand.js';
import { TokenReader } from './tokenReader.js';

/** Operators that stand between two values, the weakest first. */
const levels: readonly (readonly string[])[] = [
  ['=', '<>', '<', '>', '<=', '>='],
  ['&'],
  ['+', '-'],
  ['*', '/'],
  ['^'],
];

/** Parses a formula whose names and table parts are already plain references. Throws `UnreadableFormula`. */
export function parsedFormula(formula: StoredFormula | TypedFormula): FormulaNode {
  const reader = new TokenReader(formulaTokens(formula));
  const node = parsedExpression(reader);
  if (reader.next !== undefined) throw reader.fault('should end');
  return node;
}

/** An expression up to a comma, a closing bracket or the end. Operators of one level group from the left. */
function parsedExpression(reader: TokenReader, level = 0): FormulaNode {
  const operators = levels[level];
  if (operators === undefined) return signed(reader);
  let left = parsedExpression(reader, level + 1);
  while (reader.isOperator(...operators)) {
    const operator = reader.take().text as BinaryOperator;
    left = { kind: 'binary', operator, left, right: parsedExpression(reader, level + 1) };
  }
  return left;
}

/** A sign binds more tightly than a power: in a spreadsheet `-2^2` is 4. */
function signed(reader: TokenReader): FormulaNode {
  if (reader.isOperator('-', '+', '@')) {
    const operator = reader.take().text as '-' | '+' | '@';
    return { kind: 'unary', operator, of: reader.within(() => signed(reader)) };
  }
  let node = joined(reader);
  while (reader.isOperator('%')) {
    reader.take();
    node = { kind: 'unary', operator: '%', of: node };
  }
  return node;
}

/** A range built from two references, `A1:INDEX(A:A,5)`, or the cells that two ranges share, `A1:B9 B2:C3`. */
function joined(reader: TokenReader): FormulaNode {
  let left = parsedOperand(reader, nested);
  for (;;) {
    if (reader.isOperator(':')) {
      reader.take();
      left = { kind: 'binary', operator: ':', left, right: parsedOperand(reader, nested) };
    } else if (reader.hasSpace && ['reference', 'name', 'function', 'open'].includes(reader.next?.kind ?? '')) {
      left = { kind: 'binary', operator: ' ', left, right: parsedOperand(reader, nested) };
    } else return left;
  }
}

function nested(reader: TokenReader): FormulaNode {
  return reader.within(() => parsedExpression(reader));
}
