import { cardsIn } from '../logs/cardsIn.js';
import type { FoundCard, FoundLog } from '../logs/found.js';
import type { Book } from '../../sheet/index.js';
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
