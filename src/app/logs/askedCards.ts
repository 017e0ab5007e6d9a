import { cardWordsFor } from '../../engine/index.js';
import { type Book, FileProblem } from '../../sheet/index.js';
import type { FoundCard } from './found.js';
import { isBlankCell, valueAt } from './cellsAt.js';
import { placedRange } from './placedRange.js';
import { rangeText } from './rangeText.js';

interface AskedCard {
  readonly book: Book;
  readonly text: string;
  /** The log's sheet. */
  readonly home: string;
}

/** The card, or the rows of a table of cards, in a range that somebody names. */
export function askedCards({ book, text, home }: AskedCard): FoundCard[] {
  const { sheet, range } = placedRange({ book, text, home });
  const { firstRow, firstColumn, lastRow, lastColumn } = range;
  const nameOf = (row: number, column: number): string | undefined =>
    cardWordsFor(String(valueAt(sheet, row, column) ?? ''))?.name;
  const columns = Array.from({ length: lastColumn - firstColumn + 1 }, (_, i) => firstColumn + i);
  const rows = Array.from({ length: lastRow - firstRow + 1 }, (_, i) => firstRow + i);
  if (columns.length === 2) {
    const named = rows.find((row) => nameOf(row, firstColumn) === 'system' && !isBlankCell(sheet, row, lastColumn));
    const system = named === undefined ? null : String(valueAt(sheet, named, lastColumn)).trim();
    return [{ sheet: sheet.name, range, names: null, system, isCopy: false }];
  }
  const column = columns.find((each) => nameOf(firstRow, each) === 'system');
  if (column === undefined || !columns.some((each) => nameOf(firstRow, each) === 'volume')) {
    throw new FileProblem(
      `${rangeText(sheet.name, range)} is not a card; a card has two columns, names and values, or is a table headed "System", "Volume", "Form" with a row for each system`,
    );
  }
  const names = { ...range, lastRow: firstRow };
  return rows
    .slice(1)
    .filter((row) => !isBlankCell(sheet, row, column))
    .map((row) => {
      const system = String(valueAt(sheet, row, column)).trim();
      return { sheet: sheet.name, range: { ...range, firstRow: row, lastRow: row }, names, system, isCopy: false };
    });
}
