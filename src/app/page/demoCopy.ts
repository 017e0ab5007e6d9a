import { FileProblem, readBook } from '../../sheet/index.js';
import { gridFormulas } from './gridFormulas.js';
import type { GridSheet } from './gridSheets.js';
import { savedCopy, type SavedCopy } from './savedCopy.js';
import { sheetId } from './sheetId.js';
import type { ShownFile } from './shownFile.js';

const missing =
  'it is not beside this page, so no copy was made; run "npm run templates" where the page was built, and save again';

/** A copy of the demo, which the grid shows from its plans: the file made of the same plans, with what was changed. */
export async function demoCopy(shown: ShownFile, sheets: readonly GridSheet[]): Promise<SavedCopy> {
  const bytes = await demoBytes(`templates/${shown.name}`);
  const book = readBook(bytes, shown.name);
  // The demo's sheets have their names for ids, those of a file their places.
  const placed = sheets.map((sheet) => {
    const index = book.sheets.findIndex(({ name }) => name === sheet.id);
    return index < 0 ? sheet : { ...sheet, id: sheetId(index) };
  });
  return savedCopy(
    { ...shown, opened: { bytes, book }, formulas: gridFormulas(book) },
    placed,
    'the demo as it was made',
  );
}

async function demoBytes(address: string): Promise<Uint8Array> {
  const response = await fetch(address).catch(() => undefined);
  if (response?.ok !== true) throw new FileProblem(missing);
  return new Uint8Array(await response.arrayBuffer());
}
