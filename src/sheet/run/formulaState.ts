import type { CellPlace, CellRange } from '../address/cellRange.js';
import type { CellValue } from '../cell/cellValue.js';
import type { StoredFormula } from '../cell/formulaText.js';
import type { Area } from '../evaluate/value.js';
import type { MomentColumns } from './momentColumns.js';

/** What a function from outside said when it refused. */
export interface Refusal {
  readonly code: string;
  readonly message: string;
}

export interface Outcome {
  /** What goes into the cells of the formula, from its own on. */
  readonly grid: readonly (readonly CellValue[])[];
  /** Why it is an error, or why the stored values stay. */
  readonly reason?: string;
  /** The stored values stay: the formula cannot be worked out here. */
  readonly isKept?: boolean;
  /** The function from outside whose answer the cells hold, where the formula does no more than call it. */
  readonly calls?: string;
  /** Whether the cells hold moments, by column, where the formula does more than call a function from outside. */
  readonly moments?: MomentColumns;
}

/** A formula of a book and how far its calculation has come. */
export interface FormulaState extends CellPlace {
  readonly stored: StoredFormula;
  /** One cell; an array formula that fills fixed cells; one that grows and shrinks. */
  readonly kind: 'cell' | 'array' | 'dynamic';
  /** Whether it calls a function from outside, itself or through a name. */
  readonly callsOutside: boolean;
  /** The cells it fills as stored. */
  readonly filled: CellRange;
  /** The cells it fills now. */
  area: CellRange;
  /** Formulas that read these cells are worked out after this one. */
  claimed: CellRange | undefined;
  state: 'waiting' | 'planned' | 'running' | 'done';
  /** On the run's own clock. */
  workedAt: number;
  reads: Area[];
  refusals: Refusal[];
  /** Heading rows of the tables that functions from outside gave it, by the name of the function. */
  headings: Map<string, readonly CellValue[]>;
  outcome?: Outcome;
}
