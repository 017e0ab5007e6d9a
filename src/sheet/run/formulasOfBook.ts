import { oneCell, type CellPlace } from '../address/cellRange.js';
import type { Book, BookCell } from '../book/book.js';
import { callsOutside } from '../formula/functionName.js';
import type { OutsideNames } from '../formula/outsideFunctions.js';
import { FormulaTexts } from './formulaTexts.js';
import type { FormulaState } from './formulaState.js';

/** The formulas of a book, sheet by sheet and row by row. */
export function formulasOfBook(book: Book, outside: OutsideNames): FormulaState[] {
  const formulas = writtenFormulas(book, outside);
  if (!book.names.some(({ formula }) => callsOutside(formula, outside))) return formulas;
  const texts = new FormulaTexts(book);
  return formulas.map((one) => ({
    ...one,
    callsOutside: one.callsOutside || callsOutside(texts.plainText(one), outside),
  }));
}

function writtenFormulas(book: Book, outside: OutsideNames): FormulaState[] {
  return book.sheets.flatMap(({ name, rows }) =>
    rows.flatMap((cells, row) =>
      (cells ?? []).flatMap((cell, column) => {
        if (cell?.formula === undefined) return [];
        const place = { sheet: name, row, column };
        return [runFormula(cell, place, { stored: cell.formula, callsOutside: callsOutside(cell.formula, outside) })];
      }),
    ),
  );
}

function runFormula(
  cell: BookCell,
  place: CellPlace,
  formula: Pick<FormulaState, 'stored' | 'callsOutside'>,
): FormulaState {
  const filled = cell.fills ?? oneCell(place);
  return {
    ...place,
    ...formula,
    kind: cell.dynamic === true ? 'dynamic' : cell.fills === undefined ? 'cell' : 'array',
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
