import { isoFromSerial } from '../../base/isoFromSerial.js';
import { addressOf } from '../address/addressOf.js';
import { oneCell } from '../address/cellRange.js';
import type { Book } from '../book/book.js';
import type { OutsideFunctions } from '../formula/outsideFunctions.js';
import { Dependents } from '../run/dependents.js';
import { FormulaTexts } from '../run/formulaTexts.js';
import type { FormulaState } from '../run/formulaState.js';
import { formulasOfBook } from '../run/formulasOfBook.js';
import type { CellAnswer } from './cellAnswers.js';
import type { CellChange } from './plannedWrites.js';

const mostNamed = 5;

interface RemarkParts {
  readonly book: Book;
  readonly outside: OutsideFunctions;
  readonly answers: readonly CellAnswer[];
  readonly changes: readonly CellChange[];
  /** [serial day] */
  readonly now: number;
}

/** What the owner of a file should know about its fresh copy. */
export function recalcRemarks({ book, outside, answers, changes, now }: RemarkParts): string[] {
  if (changes.length === 0) return keptRemarks(answers);
  const formulas = formulasOfBook(book, outside);
  const texts = new FormulaTexts(book);
  const others = formulas.filter((formula) => !formula.callsOutside);
  return [...keptRemarks(answers), ...clockRemarks(formulas, texts, now), ...readerRemarks(others, texts, changes)];
}

function keptRemarks(answers: readonly CellAnswer[]): string[] {
  const kept = answers.filter(({ isKept, formula }) => isKept === true && formula !== '');
  const named = kept
    .slice(0, mostNamed)
    .map(
      ({ sheet, row, column, reason = '' }) => `${sheet}!${addressOf(row, column)} keeps its stored value: ${reason}`,
    );
  const rest = kept.length - named.length;
  if (rest === 0) return named;
  const more = rest === 1 ? '1 more formula keeps its stored value' : `${rest} more formulas keep their stored values`;
  return [...named, `${more} for such reasons`];
}

/** A cell that asks for the present time counted with the moment given, while the file still shows the stored one. */
function clockRemarks(formulas: readonly FormulaState[], texts: FormulaTexts, now: number): string[] {
  const clocks = formulas.filter((formula) => !formula.callsOutside && texts.asksForNow(formula));
  if (clocks.length === 0) return [];
  const read = new Dependents(formulas, (formula) => texts.references(formula));
  const used = clocks.find(({ sheet, area }) =>
    [...read.of([{ sheet, range: area }])].some((formula) => formula.callsOutside),
  );
  if (used === undefined) return [];
  const where = `${used.sheet}!${addressOf(used.row, used.column)}`;
  return [
    `${where} asks for the present time: the answers hold for ${isoFromSerial(now)}, and its own stored value stays`,
  ];
}

function readerRemarks(others: readonly FormulaState[], texts: FormulaTexts, changes: readonly CellChange[]): string[] {
  const readers = new Dependents(others, (formula) => texts.references(formula)).of(
    changes.map((change) => ({ sheet: change.sheet, range: oneCell(change) })),
  );
  if (readers.size === 0) return [];
  const [them, they] = readers.size === 1 ? ['formula reads', 'it'] : ['formulas read', 'them'];
  return [`${readers.size} other ${them} cells that changed; a spreadsheet program recalculates ${they}`];
}
