import { type Book, type BookSheet, isInside } from '../../sheet/index.js';
import { cardWordsFor } from '../../engine/index.js';
import { cardAroundVolume } from './cardAroundVolume.js';
import { cardTableAt } from './cardTableAt.js';
import { filledRanges } from './filledRanges.js';
import type { FoundCard } from './found.js';
import { writtenText } from './cellsAt.js';

/** A card stands near the top of its sheet. */
const searchedRows = 500;
const maybeVolume = /vol/i;

/**
 * The cards of a book: a name of a volume with its value, and near it the form or band. In two columns, names beside
 * values, or as a table with a row for each system.
 */
export function cardsIn(book: Book): FoundCard[] {
  return book.sheets.flatMap(sheetCards);
}

function sheetCards(sheet: BookSheet): FoundCard[] {
  const found: FoundCard[] = [];
  const filled = filledRanges(sheet);
  const isTaken = (row: number, column: number): boolean =>
    found.some(({ range, names }) => isInside(range, row, column) || (names !== null && isInside(names, row, column)));
  for (const [row, cells] of sheet.rows.slice(0, searchedRows).entries()) {
    for (const column of volumeColumns(sheet, row, cells?.length ?? 0)) {
      if (isTaken(row, column) || filled.some((range) => isInside(range, row, column))) continue;
      const table = cardTableAt(sheet, row, column);
      found.push(
        ...(table.length > 0
          ? table
          : cardAroundVolume({ sheet, row, column, filled, isTaken: (at) => isTaken(at, column) })),
      );
    }
  }
  return found;
}

function volumeColumns(sheet: BookSheet, row: number, width: number): number[] {
  const columns: number[] = [];
  for (let column = 0; column < width; column++) {
    const text = writtenText(sheet, row, column);
    if (maybeVolume.test(text) && cardWordsFor(text)?.name === 'volume') columns.push(column);
  }
  return columns;
}
