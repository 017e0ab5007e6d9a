import type { BundledFunction } from '../../app/calls/bundledFunction.js';
import type { Book } from '../book/book.js';
import { callsUsual } from './callsUsual.js';
import type { CellAnswer } from './cellAnswer.js';
import { cellAnswers } from './cellAnswers.js';
import { loadedLibrary } from './loadedLibrary.js';
import { BookRun } from '../run/bookRun.js';
import { FormulaTexts } from '../run/formulaTexts.js';
import { tellsTime } from '../run/tellsTime.js';
import { runFormulas } from '../run/runFormulas.js';

export interface EvaluationTerms {
  /** What NOW() gives, TODAY() without its time of day. [serial day from 1900] */
  readonly now: number;
  /** Every formula is worked out, not those with functions of ours alone. */
  readonly all?: boolean;
}

/**
 * Works out the formulas of a book that call our functions. Another formula counts by its stored value, but for those that
 * read one of ours or tell the time: they are worked out on the way and not among the answers.
 */
export async function evaluatedBook(
  book: Book,
  bundle: readonly BundledFunction[],
  { now, all = false }: EvaluationTerms,
): Promise<CellAnswer[]> {
  const formulas = runFormulas(book);
  const asked = all ? formulas : formulas.filter((formula) => formula.isOurs);
  if (asked.length === 0) return [];
  const texts = new FormulaTexts(book);
  const needsLibrary = asked.length < formulas.length || asked.some((formula) => callsUsual(texts.plainText(formula)));
  const library = needsLibrary ? await loadedLibrary() : undefined;
  const clocks = formulas.filter((formula) => !formula.isOurs && tellsTime(texts.plainText(formula)));
  new BookRun({ book, formulas, texts, bundle, library, now }, new Set([...asked, ...clocks])).workOut();
  return cellAnswers(asked);
}
