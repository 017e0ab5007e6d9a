import type { CellPlace, CellRange } from '../address/cellRange.js';
import type { CellValue } from '../cell/cellValue.js';
import type { FormulaNode } from '../formula/formulaNode.js';

/** Rows of as many cells each, at least one. */
export type Grid = readonly (readonly CellValue[])[];

/** What a part of a formula can give. */
export type Value = CellValue | Grid | Area | Lambda;

/** Cells of a sheet, not read yet. */
export class Area {
  constructor(
    readonly sheet: string,
    readonly range: CellRange,
    /** Whole columns or rows: they are read as far as the sheet goes. */
    readonly isWhole = false,
  ) {}

  get rowCount(): number {
    return this.range.lastRow - this.range.firstRow + 1;
  }

  get columnCount(): number {
    return this.range.lastColumn - this.range.firstColumn + 1;
  }

  get isOneCell(): boolean {
    return this.rowCount === 1 && this.columnCount === 1;
  }
}

/** The book around a formula. */
export interface World {
  /** [serial day] */
  readonly now: number;
  /** The sheet of a name in any case; undefined where there is none. */
  sheetNamed(name: string): string | undefined;
  /** The values of an area; whole columns end with the last row in use. */
  rows(area: Area): Grid;
  /** The cells that the array formula of a cell fills. */
  spill(place: CellPlace): CellRange | undefined;
  /** What a text such as `Log!A1:B9` or a name stands for. */
  textAsFormula(text: string, place: CellPlace): FormulaNode;
  /** Calls a function from outside or a usual one; throws `UnreadableFormula` for an unknown one. */
  call(name: string, given: readonly (Value | undefined)[], place: CellPlace): Value;
}

/** All that a part of a formula can refer to. */
export interface Scope {
  readonly world: World;
  readonly place: CellPlace;
  /** Values of LET and parameters of LAMBDA, in lower case. */
  readonly names: ReadonlyMap<string, Value>;
  /** Whether a range where one value is wanted means its cell in the row or column of the formula, as in formulas without dynamic arrays. */
  readonly intersects: boolean;
  evaluate(node: FormulaNode, scope: Scope): Value;
}

/** A function that works out its own arguments, or does not. */
export type Form = (given: readonly (FormulaNode | undefined)[], scope: Scope) => Value;

/** A formula read a cell that is being worked out for it. */
export class CircularReference extends Error {
  override readonly name = 'CircularReference';

  constructor(readonly of: CellPlace) {
    super('circular reference');
  }
}

/** A function made by LAMBDA. */
export class Lambda {
  constructor(
    readonly parameters: readonly string[],
    readonly body: FormulaNode,
    readonly scope: Scope,
  ) {}
}

export function isGrid(value: Value | undefined): value is Grid {
  return Array.isArray(value);
}
