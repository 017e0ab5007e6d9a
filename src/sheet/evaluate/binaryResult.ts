import { isCellError, errorCell, type CellError, type CellValue } from '../cell/cellValue.js';
import type { BinaryOperator } from '../formula/formulaNode.js';
import { cellAsText, cellNumber } from './cellReading.js';

type Plain = Exclude<CellValue, CellError>;
type CellOperator = Exclude<BinaryOperator, ':' | ' '>;

const order = new Intl.Collator('en', { sensitivity: 'accent' });

/** The cell that an operator makes of two. */
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

/**
 * Below 0, 0 or above 0 as a formula compares two cells: numbers before texts before TRUE and FALSE, texts regardless of
 * case, and a blank like the empty value of the other's kind.
 */
function comparison(left: CellValue, right: CellValue): number | CellError {
  if (isCellError(left)) return left;
  if (isCellError(right)) return right;
  const [a, b] = [filled(left, right), filled(right, left)];
  if (typeof a === 'string' && typeof b === 'string') {
    return a.toLowerCase() === b.toLowerCase() ? 0 : order.compare(a, b);
  }
  if (typeof a !== typeof b) return rank(a) - rank(b);
  return Number(a) - Number(b);
}

function filled(value: Plain, other: Plain): number | string | boolean {
  if (value !== null) return value;
  return typeof other === 'string' ? '' : typeof other === 'boolean' ? false : 0;
}

function rank(value: number | string | boolean): number {
  return typeof value === 'number' ? 0 : typeof value === 'string' ? 1 : 2;
}
