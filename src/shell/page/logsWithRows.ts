import type { FoundLog } from '../locate/foundLog.js';
import { logsIn } from '../locate/logsIn.js';
import type { Book } from '../workbook/book.js';

/** The logs of a book in which something is logged. */
export function logsWithRows(book: Book): FoundLog[] {
  return logsIn(book).filter(({ range }) => range.lastRow > range.firstRow);
}
