import { callsOurs } from '../formula/callsOurs.js';
import type { Book, BookCell } from '../book/book.js';
import { FormulaTexts } from './formulaTexts.js';
import type { RunFormula } from './runFormula.js';

/** The formulas of a book, sheet by sheet and row by row. One that calls a function of ours through a name is ours too. */
export function runFormulas(book: Book): RunFormula[] {
  const formulas = writtenFormulas(book);
  if (!book.names.some(({ formula }) => callsOurs(formula))) return formulas;
  const texts = new FormulaTexts(book);
  return formulas.map((one) => (one.isOurs || !callsOurs(texts.plainText(one)) ? one : { ...one, isOurs: true }));
}

function writtenFormulas(book: Book): RunFormula[] {
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
    headings: new Map(),
  };
}
