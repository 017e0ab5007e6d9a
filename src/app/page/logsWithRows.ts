import type { FoundLog } from '../logs/found.js';
import { logsIn } from '../logs/logsIn.js';
import type { Book } from '../../sheet/index.js';

/** The logs of a book in which something is logged. */
export function logsWithRows(book: Book): FoundLog[] {
  return logsIn(book).filter(({ range }) => range.lastRow > range.firstRow);
}
