import { type Book, readBook } from '../../sheet/index.js';
import type { OpenedSheet } from './openSheet.js';
import { showBook } from './showBook.js';
import type { ShownFile } from './shownFile.js';
import { showText } from './element.js';

const name = 'demo.xlsx';
const missing =
  'demo.xlsx is not beside this page, so the sheet is empty; run "npm run templates" where the page was built, and load the page again.';
const emptyBook: Book = {
  kind: 'csv',
  sheets: [{ name: 'Sheet1', hidden: false, rows: [], merged: [], widths: [] }],
  names: [],
  tables: [],
  date1904: false,
  remarks: [],
};

/** Shows the demo workbook, a file like any other; without its file an empty sheet, and a sentence that says so. */
export async function openDemo(sheet: OpenedSheet): Promise<ShownFile> {
  const response = await fetch(`templates/${name}`).catch(() => undefined);
  if (response?.ok !== true) {
    showText('file-line', missing, 'refusal');
    return showBook(sheet, { name: 'new.csv', bytes: new Uint8Array(), book: emptyBook });
  }
  const bytes = new Uint8Array(await response.arrayBuffer());
  return { ...(await showBook(sheet, { name, bytes, book: readBook(bytes, name, { looks: true }) })), isDemo: true };
}
