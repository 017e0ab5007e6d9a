import { cardsIn } from '../locate/cardsIn.js';
import type { FoundCard } from '../locate/foundCard.js';
import type { FoundLog } from '../locate/foundLog.js';
import type { Book } from '../workbook/book.js';
import { logsWithRows } from './logsWithRows.js';

export interface Found {
  readonly book: Book;
  readonly logs: readonly FoundLog[];
  readonly cards: readonly FoundCard[];
}

/** The logs and cards of a book. */
export function foundIn(book: Book): Found {
  return { book, logs: logsWithRows(book), cards: cardsIn(book) };
}
