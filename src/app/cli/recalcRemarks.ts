import { isoFromSerial } from '../../engine/index.js';
import {
  addressOf,
  type Book,
  type CellAnswer,
  type CellChange,
  Dependents,
  FormulaTexts,
  type RunFormula,
  runFormulas,
  tellsTime,
} from '../../sheet/index.js';

const mostNamed = 5;

interface RemarkParts {
  readonly book: Book;
  readonly answers: readonly CellAnswer[];
  readonly changes: readonly CellChange[];
  /** [serial day] */
  readonly now: number;
}

/** What the owner of a file should know about its fresh copy. */
export function recalcRemarks({ book, answers, changes, now }: RemarkParts): string[] {
  if (changes.length === 0) return keptRemarks(answers);
  const formulas = runFormulas(book);
  const texts = new FormulaTexts(book);
  const others = formulas.filter((formula) => !formula.isOurs);
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

/** A cell of others that holds the time counted by the moment given, while the file still shows the stored one. */
function clockRemarks(formulas: readonly RunFormula[], texts: FormulaTexts, now: number): string[] {
  const clocks = formulas.filter((formula) => !formula.isOurs && tellsTime(texts.plainText(formula)));
  if (clocks.length === 0) return [];
  const read = new Dependents(formulas, (formula) => texts.references(formula));
  const used = clocks.find(({ sheet, area }) =>
    [...read.of([{ sheet, range: area }])].some((formula) => formula.isOurs),
  );
  if (used === undefined) return [];
  const where = `${used.sheet}!${addressOf(used.row, used.column)}`;
  return [`${where} tells the time: the answers hold for ${isoFromSerial(now)}, its own stored value stays`];
}

function readerRemarks(others: readonly RunFormula[], texts: FormulaTexts, changes: readonly CellChange[]): string[] {
  const readers = new Dependents(others, (formula) => texts.references(formula)).of(
    changes.map(({ sheet, row, column }) => ({
      sheet,
      range: { firstRow: row, firstColumn: column, lastRow: row, lastColumn: column },
    })),
  );
  if (readers.size === 0) return [];
  const [them, they] = readers.size === 1 ? ['formula reads', 'it'] : ['formulas read', 'them'];
  return [
    `${readers.size} other ${them} cells that changed; a spreadsheet program computes ${they} anew when it recalculates`,
  ];
}
