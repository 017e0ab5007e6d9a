import type { Book } from '../book/book.js';
import type { OutsideFunctions } from '../formula/outsideFunctions.js';
import { loadedLibrary } from '../library/loadedLibrary.js';
import { BookRun } from '../run/bookRun.js';
import { needsLibrary } from '../run/formulaFunctions.js';
import { FormulaTexts } from '../run/formulaTexts.js';
import { formulasOfBook } from '../run/formulasOfBook.js';
import { cellAnswers, type CellAnswer } from './cellAnswers.js';

interface EvaluationTerms {
  /** What NOW() gives, TODAY() without its time of day. [serial day from 1900] */
  readonly now: number;
  /** Every formula is worked out, not only those that call functions from outside. */
  readonly all?: boolean;
}

/**
 * Works out the formulas of a book that call functions from outside. Any other formula counts by its stored value, unless
 * it reads one of those or asks for the present time: then it is worked out on the way, and not among the answers.
 */
export async function evaluatedBook(
  book: Book,
  outside: OutsideFunctions,
  { now, all = false }: EvaluationTerms,
): Promise<CellAnswer[]> {
  const formulas = formulasOfBook(book, outside);
  const asked = all ? formulas : formulas.filter((formula) => formula.callsOutside);
  if (asked.length === 0) return [];
  const texts = new FormulaTexts(book);
  const isUsual = asked.length < formulas.length || asked.some((one) => needsLibrary(texts.plainText(one), outside));
  const library = isUsual ? await loadedLibrary() : undefined;
  const clocks = formulas.filter((formula) => !formula.callsOutside && texts.asksForNow(formula));
  new BookRun({ book, formulas, texts, outside, library, now }, new Set([...asked, ...clocks])).workOut();
  return cellAnswers(asked, outside);
}
