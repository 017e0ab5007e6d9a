import type { CellRange } from '../address/cellRange.js';
import type { CellValue } from '../cell/cellValue.js';

/** A formula taken apart: what is worked out of what. */
export type FormulaNode =
  | { readonly kind: 'value'; readonly value: CellValue }
  | { readonly kind: 'array'; readonly rows: readonly (readonly CellValue[])[] }
  | {
      readonly kind: 'reference';
      readonly sheet: string | undefined;
      readonly range: CellRange;
      readonly isWhole: boolean;
    }
  /** A value of LET, a parameter of LAMBDA, or a name that nothing explains; in small letters. */
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

/** A formula that cannot be worked out here. The message says why, to follow "the formula" in a sentence. */
export class UnreadableFormula extends Error {
  override readonly name = 'UnreadableFormula';
}
