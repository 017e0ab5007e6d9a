import type { Book, BookCell } from '../../sheet/index.js';
import { rangeParts } from '../logs/rangeText.js';
import type { GridCell, GridSheet } from './gridSheets.js';
import { sheetId } from './gridKeys.js';
import type { ShownFile } from './shownFile.js';

/** The opened file as it stands in the grid now, a book like the one that was read from it. */
export function gridBook(sheets: readonly GridSheet[], shown: Pick<ShownFile, 'opened' | 'places'>): Book {
  const { book } = shown.opened;
  const byId = new Map(sheets.map(({ id, name }) => [id, name]));
  const names = new Map(book.sheets.map(({ name }, index) => [name, byId.get(sheetId(index))]));
  return {
    ...book,
    sheets: sheets.map(({ name, hidden, rows, merged, widths }) => ({
      name,
      hidden,
      rows: rows.map((row) => row?.map(bookCell)),
      merged,
      widths,
    })),
    ...placesIn(shown.places, (sheet) => names.get(sheet)),
  };
}

function bookCell(cell: GridCell | undefined): BookCell | undefined {
  if (cell === undefined) return undefined;
  const { value, format, stored } = cell;
  const formula = cell.formula?.slice(1) ?? stored?.formula;
  const fills = cell.spills ?? stored?.fills;
  return {
    value,
    ...(formula === undefined ? {} : { formula }),
    ...(format === undefined ? {} : { format }),
    ...(fills === undefined ? {} : { fills, dynamic: true }),
  };
}

/** Under the names that their sheets have now; what stood on a sheet that is gone is gone with it. */
function placesIn({ tables, names }: ShownFile['places'], nameNow: (sheet: string) => string | undefined) {
  return {
    tables: tables.flatMap((table) => {
      const sheet = nameNow(table.sheet);
      return sheet === undefined ? [] : [{ ...table, sheet }];
    }),
    names: names.flatMap((name) => {
      const scope = name.sheet === undefined ? undefined : nameNow(name.sheet);
      if (name.sheet !== undefined && scope === undefined) return [];
      const written = rangeParts(name.formula)?.sheet;
      const now = written === undefined ? undefined : nameNow(written);
      const cells = name.formula.slice(name.formula.lastIndexOf('!') + 1);
      const formula = now === undefined || now === written ? name.formula : `'${now.replace(/'/g, "''")}'!${cells}`;
      return [{ ...name, formula, ...(scope === undefined ? {} : { sheet: scope }) }];
    }),
  };
}
