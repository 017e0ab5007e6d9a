import type { Given } from '../../../sheet/index.js';

/** A call written as in a cell, with its arguments as values. */
export interface Formula {
  /** Without the namespace, in capitals. */
  readonly name: string;
  readonly given: readonly Given[];
}

/** Where a formula cannot be read, and why. */
export interface FormulaFault {
  /** The character of the formula, counted from 1. */
  readonly at: number;
  readonly message: string;
}
