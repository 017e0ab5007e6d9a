import type { Book } from '../../sheet/index.js';
import { logsIn } from './logsIn.js';

/** The names of hidden sheets that hold a log and are left out, as sheets that are shown hold one too. */
export function hiddenLogs(book: Book): string[] {
  const hidden = book.sheets.filter((sheet) => sheet.hidden).map(({ name }) => name);
  if (hidden.length === 0) return [];
  const audited = new Set(logsIn(book).map(({ sheet }) => sheet));
  return hidden.filter(
    (name) => !audited.has(name) && logsIn(book, name).some(({ range }) => range.lastRow > range.firstRow),
  );
}
