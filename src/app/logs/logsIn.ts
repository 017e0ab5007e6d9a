import type { Book, BookSheet, CellRange } from '../../sheet/index.js';
import { cardsIn } from './cardsIn.js';
import type { FoundCard, FoundLog } from './found.js';
import { isSameName } from './sheetNamed.js';
import { sheetLogs } from './sheetLogs.js';

/**
 * The logs of a book: a heading row that names a time and a copper column, in people's own words, and the rows below. What
 * array formulas fill is an answer and no log. Hidden sheets are looked at where nothing else holds a log, or when asked.
 */
export function logsIn(book: Book, sheet?: string, cards: readonly FoundCard[] = cardsIn(book)): FoundLog[] {
  const inSheets = (sheets: readonly BookSheet[]): FoundLog[] =>
    withRows(sheets.flatMap((each) => sheetLogs({ book, sheet: each, cards: cardRanges(cards, each.name) })));
  if (sheet !== undefined) return inSheets(book.sheets.filter(({ name }) => isSameName(name, sheet)));
  const found = inSheets(book.sheets.filter(({ hidden }) => !hidden));
  return found.length > 0 ? found : inSheets(book.sheets.filter(({ hidden }) => hidden));
}

/** Words that look like headings, with nothing below, are an empty log, but only where there is no other log. */
function withRows(logs: FoundLog[]): FoundLog[] {
  const begun = logs.filter(({ range }) => range.lastRow > range.firstRow);
  return begun.length > 0 ? begun : logs;
}

function cardRanges(cards: readonly FoundCard[], sheet: string): CellRange[] {
  return cards
    .filter((card) => card.sheet === sheet)
    .flatMap(({ range, names }) => (names === null ? [range] : [range, names]));
}

/** The names of hidden sheets that hold a log and are left out, as sheets that are shown hold one too. */
export function hiddenLogs(book: Book): string[] {
  const hidden = book.sheets.filter((sheet) => sheet.hidden).map(({ name }) => name);
  if (hidden.length === 0) return [];
  const audited = new Set(logsIn(book).map(({ sheet }) => sheet));
  return hidden.filter(
    (name) => !audited.has(name) && logsIn(book, name).some(({ range }) => range.lastRow > range.firstRow),
  );
}
