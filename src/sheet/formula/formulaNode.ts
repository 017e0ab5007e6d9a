import type { CellRange } from '../address/cellRange.js';
import type { CellValue } from '../cell/cellValue.js';

/** A parsed formula. */
export type FormulaNode =
  | { readonly kind: 'value'; readonly value: CellValue }
  | { readonly kind: 'array'; readonly rows: readonly (readonly CellValue[])[] }
  | {
      readonly kind: 'reference';
      readonly sheet: string | undefined;
      readonly range: CellRange;
      readonly isWhole: boolean;
    }
  /** A value of LET, a parameter of LAMBDA, or a name with no meaning; in lower case. */
  | { readonly kind: 'name'; readonly name: string }
  /** A call of a function by its name as typed, in capitals; an argument left out is undefined. */
  | { readonly kind: 'call'; readonly name: string; readonly given: readonly (FormulaNode | undefined)[] }
  /** A call of what another formula gives, such as `LAMBDA(x,x+1)(2)`. */
  | { readonly kind: 'apply'; readonly of: FormulaNode; readonly given: readonly (FormulaNode | undefined)[] }
  | {
      readonly kind: 'binary';
      readonly operator: BinaryOperator;
      readonly left: FormulaNode;
      readonly right: FormulaNode;
    }
  | { readonly kind: 'unary'; readonly operator: '-' | '+' | '%' | '@' | '#'; readonly of: FormulaNode };

export type BinaryOperator = '+' | '-' | '*' | '/' | '^' | '&' | '=' | '<>' | '<' | '>' | '<=' | '>=' | ':' | ' ';

/** A formula that this program cannot compute. The message says why, and completes a sentence that begins "the formula". */
export class UnreadableFormula extends Error {
  override readonly name = 'UnreadableFormula';
}
