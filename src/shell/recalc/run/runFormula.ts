import type { CellRange } from '../../address/cellRange.js';
import type { CellValue } from '../../host/cellValue.js';
import { callsOurs } from '../../sheetFormula/callsOurs.js';
import type { Book, BookCell } from '../../workbook/book.js';
import type { Area } from '../evaluate/value.js';

/** What a function of ours said when it refused. */
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
  /** The function of ours whose answer the cells hold, such as QT.HOLDS, where the formula does no more than call it. */
  readonly calls?: string;
}

/** A formula of a book on its way to fresh values. */
export interface RunFormula {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly stored: string;
  /** One cell; an array formula of old, whose cells are fixed; one that grows and shrinks. */
  readonly kind: 'cell' | 'array' | 'dynamic';
  readonly isOurs: boolean;
  /** The cells it fills as stored. */
  readonly filled: CellRange;
  /** The cells it fills now. */
  area: CellRange;
  /** Readers of these cells have it worked out before. */
  claimed: CellRange | undefined;
  state: 'waiting' | 'planned' | 'running' | 'done';
  /** On the run's own clock. */
  workedAt: number;
  reads: Area[];
  refusals: Refusal[];
  outcome?: Outcome;
}

/** The formulas of a book, sheet by sheet and row by row. */
export function runFormulas(book: Book): RunFormula[] {
  return book.sheets.flatMap(({ name, rows }) =>
    rows.flatMap((cells, row) =>
      (cells ?? []).flatMap((cell, column) =>
        cell?.formula === undefined ? [] : [runFormula({ cell, formula: cell.formula, sheet: name, row, column })],
      ),
    ),
  );
}

interface FormulaCell {
  readonly cell: BookCell;
  readonly formula: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

function runFormula({ cell, formula, sheet, row, column }: FormulaCell): RunFormula {
  const filled = cell.fills ?? { firstRow: row, firstColumn: column, lastRow: row, lastColumn: column };
  return {
    sheet,
    row,
    column,
    stored: formula,
    kind: cell.dynamic === true ? 'dynamic' : cell.fills === undefined ? 'cell' : 'array',
    isOurs: callsOurs(formula),
    filled,
    area: filled,
    claimed: filled,
    state: 'waiting',
    workedAt: 0,
    reads: [],
    refusals: [],
  };
}
