import { isCellError, type CellError, type CellValue } from '../cell/cellValue.js';
import type { BinaryOperator } from '../formula/formulaNode.js';
import { cellAsText } from './cellAsText.js';
import { cellNumber } from './cellNumber.js';
import { comparison } from './comparison.js';
import { errorCell } from './value.js';

type CellOperator = Exclude<BinaryOperator, ':' | ' '>;

/** One cell out of two by an operator. */
export function binaryResult(operator: CellOperator, left: CellValue, right: CellValue): CellValue {
  if (operator === '&') {
    if (isCellError(left)) return left;
    return isCellError(right) ? right : cellAsText(left) + cellAsText(right);
  }
  if (operator === '+' || operator === '-' || operator === '*' || operator === '/' || operator === '^') {
    const [a, b] = [cellNumber(left), cellNumber(right)];
    if (isCellError(a)) return a;
    return isCellError(b) ? b : sum(operator, a, b);
  }
  const compared = comparison(left, right);
  return isCellError(compared) ? compared : holds(operator, compared);
}

function sum(operator: '+' | '-' | '*' | '/' | '^', a: number, b: number): number | CellError {
  if (operator === '/' && b === 0) return errorCell('#DIV/0!');
  if (operator === '^' && a === 0 && b <= 0) return errorCell(b === 0 ? '#NUM!' : '#DIV/0!');
  const result = arithmetic(operator, a, b);
  return Number.isFinite(result) ? result : errorCell('#NUM!');
}

function arithmetic(operator: '+' | '-' | '*' | '/' | '^', a: number, b: number): number {
  switch (operator) {
    case '+':
      return a + b;
    case '-':
      return a - b;
    case '*':
      return a * b;
    case '/':
      return a / b;
    case '^':
      return a ** b;
  }
}

function holds(operator: '=' | '<>' | '<' | '>' | '<=' | '>=', compared: number): boolean {
  switch (operator) {
    case '=':
      return compared === 0;
    case '<>':
      return compared !== 0;
    case '<':
      return compared < 0;
    case '>':
      return compared > 0;
    case '<=':
      return compared <= 0;
    case '>=':
      return compared >= 0;
  }
}
