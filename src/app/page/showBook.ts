import type { FoundLog } from '../logs/found.js';
import type { Book } from '../../sheet/index.js';
import { bookData } from './bookData.js';
import { fitWrappedRows } from './fitWrappedRows.js';
import { gridFormulas } from './gridFormulas.js';
import { logsIn } from '../logs/logsIn.js';
import { keepStored } from './keepStored.js';
import type { OpenedSheet } from './openSheet.js';
import type { ShownFile } from './shownFile.js';

interface FileRead {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly book: Book;
}

let opened = 0;
/** The page does not wait for a computation that takes longer. [ms] */
const patience = 20_000;

/** Puts an opened file into the grid in place of what is there: stored values first, then its formulas are computed. */
export async function showBook(sheet: OpenedSheet, { name, bytes, book }: FileRead): Promise<ShownFile> {
  const formulas = gridFormulas(book);
  const shown: ShownFile = { name, opened: { bytes, book }, formulas, places: book, isMoved: false };
  const logs = logsIn(book);
  const before = sheet.api.getActiveWorkbook()?.getId();
  const data = bookData({
    unit: `file-${++opened}`,
    name,
    book,
    formulas,
    headingsOf: (wanted) => headings(logs, wanted),
  });
  if (before !== undefined) sheet.api.disposeUnit(before);
  sheet.api.createWorkbook(data);
  document.title = `${name} in Lazaret`;
  if (formulas.size === 0) {
    // Else the rows are fitted once the formulas are computed.
    fitWrappedRows(sheet.univer);
    return shown;
  }
  await sheet.api.getFormula().onCalculationResultApplied(patience);
  if (keepStored(sheet, book, shown) > 0) await sheet.api.getFormula().onCalculationResultApplied(patience);
  return shown;
}

function headings(logs: readonly FoundLog[], wanted: string): FoundLog['range'][] {
  return logs.filter(({ sheet }) => sheet === wanted).map(({ range }) => ({ ...range, lastRow: range.firstRow }));
}
